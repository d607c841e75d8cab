import type { Mark, PaintOrder } from '../../ui/paint-order.ts';
import type { Letters } from '../letters.ts';
import { draw } from './draw.ts';
import { underline } from './highlights.ts';
import type { Host } from './host.ts';
import { createRuler, isLight } from './measure.ts';
import { type Box, placeGlyph, type Spot } from './place.ts';
import { cropOf, croppers, isCovered } from './sight.ts';

/** One name on the page: its button (a glyph that can be focused) and its last line when last measured, if shown. */
export type Name = {
  button: HTMLElement;
  mark: Mark;
  points: StaticRangeInit;
  last?: DOMRect | undefined;
  spot?: Spot | undefined;
};

export type PaintedList = {
  id: number;
  order: PaintOrder;
  element: Element | undefined;
  dark: boolean;
  /** Stands in something that scrolls or crops. */
  cropped: boolean;
  names: Name[];
  /** What holds the names' buttons. */
  toolbar: HTMLElement;
  /** Where the list stands now, in client pixels. */
  box(): DOMRect;
  /** Reads the layout anew and puts every glyph by its name. */
  reshape(): void;
  /** Follows the list where only its place has changed, and hides glyphs of covered letters. */
  move(): void;
  undo(): void;
};

/** Underlines the names of one list and sets a glyph by each. */
export function paintList(
  host: Host,
  { id, letters, order }: { id: number; letters: Letters; order: PaintOrder },
): PaintedList {
  const { element } = letters;
  const names: Name[] = [];
  for (const mark of order.marks) {
    const points = letters.points(mark.from, mark.to);
    const attributes = {
      class: 'name',
      tabindex: names.length > 0 ? -1 : 0,
      'aria-label': mark.label,
      hidden: '',
    };
    if (points) names.push({ button: draw(['button', attributes, mark.glyph], order.shared), mark, points });
  }
  const dark = names.length > 0 && isLight(names[0]!.points.startContainer.parentElement);
  const clear = underline(
    names.map(({ mark, points }) => ({ line: mark.line, points })),
    dark,
  );
  // Moved as one; in a box that crops the list it crops the glyphs.
  const layer = draw(['div', { class: 'layer' }]);
  const toolbar = draw(['div', { role: 'toolbar', 'aria-label': order.names }]);
  layer.style.colorScheme = dark ? 'dark' : 'light'; // as an attribute a page's policy may refuse it
  toolbar.append(...names.map(({ button }) => button));
  layer.append(toolbar);
  host.root.append(layer);
  const crops = croppers(element);
  const cropped = crops.length > 0;
  const box = () => element?.getBoundingClientRect() ?? new DOMRect();
  let measuredAt = box();
  let rows: Name[][] = []; // names whose last letters stand on one line

  /** What covers both ends of a row covers it all: two questions a row, not one a name. */
  const covered = ({ left, top }: DOMRect): Name[] => {
    const over = ({ points, last }: Name) =>
      isCovered(
        points,
        last!.right + left - measuredAt.left - 2,
        last!.bottom + top - measuredAt.top - last!.height / 2,
      );
    return rows.flatMap((row) => {
      const [first, last] = [over(row[0]!), over(row.at(-1)!)];
      return row.filter((name) => (first === last ? first : over(name)));
    });
  };

  /** All that is asked of the page's layout, before anything of ours is written. */
  const look = () => {
    const at = box();
    return { at, frame: host.frame(), crop: cropped ? cropOf(crops) : at, hidden: new Set(covered(at)) };
  };

  const place = ({ at, frame, crop, hidden } = look()) => {
    const { style } = layer;
    if (cropped)
      Object.assign(style, { width: `${crop.width}px`, height: `${crop.height}px`, overflow: 'clip' });
    // Within the layer a pixel is one of the client's, whatever the page scales.
    style.transform = `translate(${(crop.left - frame.x) / frame.scale}px, ${(crop.top - frame.y) / frame.scale}px) scale(${1 / frame.scale})`;
    toolbar.style.transform = `translate(${at.left - crop.left}px, ${at.top - crop.top}px)`;
    for (const name of names) name.button.toggleAttribute('data-covered', hidden.has(name));
  };

  const setGlyph = ({ button, last, spot }: Name) => {
    button.hidden = !last;
    if (!last) return;
    setBox(button, last, measuredAt);
    const glyph = button.firstElementChild as SVGElement;
    const size = (side: string) => Number(glyph.getAttribute(side)) * order.glyphSize;
    const at = spot && placeGlyph(spot, { width: size('width'), height: size('height') });
    glyph.style.display = at ? '' : 'none';
    if (at) setBox(glyph, at, last);
  };

  return {
    id,
    order,
    element,
    dark,
    cropped,
    names,
    toolbar,
    box,
    reshape() {
      const measure = createRuler();
      measuredAt = box();
      // In a closed accordion letters may have boxes and still not be shown.
      const shown = element?.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      for (const name of names)
        Object.assign(name, { last: undefined, spot: undefined }, shown && measure(name.points));
      const seen = names.filter(({ last }) => last);
      rows = [...Map.groupBy(seen, ({ last }) => Math.round(last!.bottom)).values()];
      const looked = look();
      names.forEach(setGlyph);
      place(looked);
    },
    move: () => place(),
    undo() {
      clear();
      layer.remove();
    },
  };
}

/** Sets an element's box, relative to another's corner. */
function setBox({ style }: HTMLElement | SVGElement, { x, y, width, height }: Box, from: Box): void {
  Object.assign(style, {
    left: `${x - from.x}px`,
    top: `${y - from.y}px`,
    width: `${width}px`,
    height: `${height}px`,
  });
}
