import type { NameToCheck, PictureRead } from '../../../core/picture/check-names.ts';
import type { Box } from '../../../core/picture/join-lines.ts';
import type { Translate } from '../../words/index.ts';

/** The least box around some, with room around it, as an SVG's view of the picture. */
function viewOf(boxes: readonly Box[], room: number, { width, height }: PictureRead): string {
  const left = Math.max(0, Math.min(width, ...boxes.map((box) => box.left)) - room);
  const top = Math.max(0, Math.min(height, ...boxes.map((box) => box.top)) - room);
  const right = Math.min(width, Math.max(0, ...boxes.map((box) => box.right)) + room);
  const bottom = Math.min(height, Math.max(0, ...boxes.map((box) => box.bottom)) + room);
  return `${left} ${top} ${Math.max(1, right - left)} ${Math.max(1, bottom - top)}`;
}

/** The list in its picture with every name's box, and the name that is looked at by itself, large. */
export function PictureView(props: {
  t: Translate;
  read: PictureRead;
  names: readonly NameToCheck[];
  lit: number | undefined;
  onLit: (index: number) => void;
}) {
  const { read, names, lit } = props;
  const { shown, width, height } = read;
  const picture = <image href={shown} width={width} height={height} />;
  const one = names.find(({ index }) => index === lit);
  return (
    <div class="picture-view">
      <svg
        role="img"
        aria-label={props.t('panel.picture.alt')}
        viewBox={viewOf(
          names.flatMap(({ boxes }) => boxes),
          24,
          read,
        )}
      >
        {picture}
        {names.flatMap(({ index, boxes, doubt }) =>
          boxes.map(({ left, top, right, bottom }) => (
            <rect
              key={`${index} ${left} ${top}`}
              class={`${index === lit ? 'lit' : ''} ${doubt ? 'doubt' : ''}`}
              x={left - 3}
              y={top - 3}
              width={right - left + 6}
              height={bottom - top + 6}
              onPointerEnter={() => props.onLit(index)}
            />
          )),
        )}
      </svg>
      {one && one.boxes.length > 0 && (
        <svg class="picture-one" aria-hidden="true" viewBox={viewOf(one.boxes, 10, read)}>
          {picture}
        </svg>
      )}
    </div>
  );
}
