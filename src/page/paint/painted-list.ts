import type { Mark, PaintOrder } from '../../contract/paint-order.ts';
import type { Letters } from '../read/letters/letters.ts';
import { draw, put } from './draw.ts';
import { underline } from './highlights.ts';
import type { Host } from './host/host.ts';
import { placeGlyph } from './where/glyph-box.ts';
import { boxOf, isShown } from './where/letter-boxes.ts';
import { isLight, type Measured, measure } from './where/measure.ts';
import { cropOf, croppers, isCovered } from './where/visibility.ts';

/** One name on the page: its button (a glyph that can be focused) and its last line when last measured, if shown. */
export type PaintedName = {
  button: HTMLElement;
  mark: Mark;
  points: StaticRangeInit;
  at: Measured;
};

export type PaintedList = {
  id: number;
  order: PaintOrder;
  element: Element | undefined;
  /** Of what is drawn by it: dark where its letters are light. */
  scheme: 'light' | 'dark';
  /** Stands in something that scrolls or crops. */
  cropped: boolean;
  names: PaintedName[];
  /** What holds the names' buttons. */
  toolbar: HTMLElement;
  /** Where the list stands now, in client pixels. */
  box(): DOMRect;
  /** Follows the list to where it stands now and hides glyphs of covered letters; `reshaped`, puts every glyph by its name anew. */
  place(reshaped: boolean): void;
};

/** Underlines the names of one list, until the signal, and sets a glyph by each. */
export function paintList(
  host: Host,
  { id, letters, order }: { id: number; letters: Letters; order: PaintOrder },
  signal: AbortSignal,
): PaintedList {
  const { element } = letters;
  const names: PaintedName[] = [];
  for (const mark of order.marks) {
    const points = letters.points(mark.from, mark.to);
    const attributes = {
      class: 'name',
      tabindex: names.length ? -1 : 0,
      'aria-label': mark.label,
      hidden: '',
    };
    if (points)
      names.push({ button: draw(['button', attributes, mark.glyph], order.shared), mark, points, at: {} });
  }
  const scheme = isLight(names[0]?.points.startContainer.parentElement) ? 'dark' : 'light';
  const clear = names.map(({ mark, points }) => underline(mark.line, points, scheme));
  signal.addEventListener('abort', () => {
    for (const each of clear) each();
  });
  // Moved as one; in a box that crops the list it crops the glyphs.
  const layer = draw(['div', { class: 'layer' }]);
  const toolbar = draw(['div', { role: 'toolbar', 'aria-label': order.names }]);
  layer.style.colorScheme = scheme; // as an attribute a page's policy may refuse it
  toolbar.append(...names.map(({ button }) => button));
  layer.append(toolbar);
  host.root.append(layer);
  const crops = croppers(element);
  const cropped = crops.length > 0;
  if (cropped) layer.style.overflow = 'clip';
  const box = () => (element ? boxOf(element) : new DOMRect());
  let measuredAt = box();
  let rows: PaintedName[][] = []; // names whose last letters stand on one line

  const putGlyph = ({ button, at: { last, spot } }: PaintedName) => {
    button.hidden = !last;
    if (!last) return;
    const { x, y, width, height } = last;
    put(button, { left: x - measuredAt.x, top: y - measuredAt.y, width, height });
    const glyph = button.firstElementChild as SVGElement;
    const size = (side: string) => Number(glyph.getAttribute(side)) * order.glyphSize;
    const at = spot && placeGlyph(spot, { width: size('width'), height: size('height') });
    glyph.style.display = at ? '' : 'none';
    if (at) put(glyph, { left: at.x - x, top: at.y - y, width: at.width, height: at.height });
  };

  return {
    id,
    order,
    element,
    scheme,
    cropped,
    names,
    toolbar,
    box,
    place(reshaped) {
      // All that is asked of the page's layout comes first, then all that is written.
      const at = box();
      if (reshaped) {
        measuredAt = at;
        // In a closed accordion letters may have boxes and still not be shown.
        const shown = element && isShown(element);
        for (const name of names) name.at = shown ? measure(name.points) : {};
        const seen = names.filter((name) => name.at.last);
        rows = [...Map.groupBy(seen, (name) => Math.round(name.at.last!.bottom)).values()];
      }
      const [dx, dy] = [at.x - measuredAt.x, at.y - measuredAt.y];
      const over = ({ points, at: { last } }: PaintedName) =>
        isCovered(points, last!.right + dx - 2, last!.bottom + dy - last!.height / 2);
      // What covers both ends of a row covers it all: asking what stands at a point is slow.
      const covered = rows.flatMap((row) => {
        const [first, last] = [over(row[0]!), over(row.at(-1)!)];
        return row.filter((name) => (first === last ? first : over(name)));
      });
      const { x, y, scale } = host.frame();
      const crop = cropped ? cropOf(crops) : at;
      if (reshaped) names.forEach(putGlyph);
      for (const name of names) name.button.toggleAttribute('data-covered', covered.includes(name));
      // Within the layer a pixel is one of the client's, whatever the page scales.
      layer.style.scale = String(1 / scale);
      put(layer, { left: (crop.x - x) / scale, top: (crop.y - y) / scale });
      if (cropped) put(layer, { width: crop.width, height: crop.height });
      put(toolbar, { left: at.x - crop.x, top: at.y - crop.y });
    },
  };
}
