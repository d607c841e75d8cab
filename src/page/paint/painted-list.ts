import type { Mark, PaintOrder } from '../../ui/paint-order.ts';
import type { Letters } from '../letters.ts';
import { draw } from './draw.ts';
import { underline } from './highlights.ts';
import type { Host } from './host.ts';
import { createRuler, type Measured } from './measure.ts';
import { placeGlyph } from './place.ts';
import { cropOf, croppers, isCovered } from './sight.ts';

/** One name on the page: its button (a glyph that can be focused) and where it stood when last measured. */
export type Name = { button: HTMLElement; mark: Mark; points: StaticRangeInit; at: Measured };

export type PaintedList = {
  id: number;
  order: PaintOrder;
  element: Element | undefined;
  dark: boolean;
  /** Stands in something that scrolls or crops. */
  cropped: boolean;
  names: Name[];
  /** Reads the layout anew and puts every glyph by its name. */
  reshape(): void;
  /** Follows the list where only its place has changed, and hides glyphs of covered letters. */
  move(): void;
  undo(): void;
};

const nowhere: Measured = { fragments: [], spot: undefined };

/** Underlines the names of one list and sets a glyph by each. */
export function paintList(
  doc: Document,
  host: Host,
  { id, letters, order }: { id: number; letters: Letters; order: PaintOrder },
): PaintedList {
  const wanted = order.marks.flatMap((mark) => {
    const points = letters.points(mark.from, mark.to);
    return points ? [{ mark, points }] : [];
  });
  const dark = wanted[0] ? createRuler(doc).isDark(wanted[0].points) : false;
  const clear = underline(
    wanted.map(({ mark, points }) => ({ line: mark.line, points })),
    dark,
  );
  const layer = draw(doc, ['div', { class: 'layer' }]);
  layer.style.colorScheme = dark ? 'dark' : 'light'; // as an attribute a page's policy may refuse it
  const inner = draw(doc, ['div', { class: 'names', role: 'toolbar', 'aria-label': order.names }]);
  const names: Name[] = wanted.map(({ mark, points }, i) => {
    const attributes = { class: 'name', tabindex: i === 0 ? 0 : -1, 'aria-label': mark.label, hidden: '' };
    const button = draw(doc, ['button', attributes, mark.glyph], order.shared);
    return { button, mark, points, at: nowhere };
  });
  inner.append(...names.map((name) => name.button));
  layer.append(inner);
  host.root.append(layer);
  const crops = croppers(letters.element);
  let measuredAt = { x: 0, y: 0 };
  let rows: Name[][] = []; // names whose last letters stand on one line

  /** All that is asked of the page's layout, before anything of ours is written. */
  const look = () => {
    const at = letters.element?.getBoundingClientRect();
    return at && { at, frame: host.frame(), crop: cropOf(crops), covered: covered(at) };
  };

  /** What covers both ends of a row covers it all: two questions a row, not one a name. */
  const covered = (at: DOMRect): Set<Name> => {
    const [dx, dy] = [at.left - measuredAt.x, at.top - measuredAt.y];
    const over = ({ at: { fragments }, points }: Name): boolean => {
      const last = fragments.at(-1);
      return (
        last !== undefined && isCovered(doc, points, last.right + dx - 2, last.bottom + dy - last.height / 2)
      );
    };
    const found = new Set<Name>();
    for (const row of rows) {
      const [first, last] = [row[0]!, row.at(-1)!];
      const ends = [over(first), row.length > 1 ? over(last) : undefined];
      if (ends[0] && ends[1] !== false) for (const name of row) found.add(name);
      else if (ends[0] || ends[1]) for (const name of row) if (over(name)) found.add(name);
    }
    return found;
  };

  const place = ({ at, frame, crop, covered }: NonNullable<ReturnType<typeof look>>) => {
    const [x, y] = crop ? [crop.left, crop.top] : [at.left, at.top];
    const local = (px: number, from: number) => (px - from) / frame.scale;
    layer.classList.toggle('cropped', crop !== undefined);
    layer.style.width = crop ? `${crop.width / frame.scale}px` : '0px';
    layer.style.height = crop ? `${crop.height / frame.scale}px` : '0px';
    layer.style.transform = `translate(${local(x, frame.x)}px, ${local(y, frame.y)}px)`;
    inner.style.transform = `translate(${local(at.left, x)}px, ${local(at.top, y)}px)`;
    for (const name of names) name.button.toggleAttribute('data-covered', covered.has(name));
  };

  const setGlyph = ({ button, at: { fragments, spot } }: Name, at: DOMRect, scale: number) => {
    const last = fragments.at(-1);
    button.hidden = last === undefined;
    if (!last) return;
    const set = (style: CSSStyleDeclaration, sides: Record<string, number>) => {
      for (const [side, px] of Object.entries(sides)) style.setProperty(side, `${px / scale}px`);
    };
    const { width, height } = last;
    set(button.style, { left: last.left - at.left, top: last.top - at.top, width, height });
    const glyph = button.firstElementChild as SVGElement;
    const size = (side: string) => Number(glyph.getAttribute(side)) * order.glyphSize;
    const box = spot && placeGlyph(spot, { width: size('width'), height: size('height') });
    glyph.style.display = box ? 'block' : 'none';
    if (box)
      set(glyph.style, {
        left: box.x - last.left,
        top: box.y - last.top,
        width: box.width,
        height: box.height,
      });
  };

  return {
    id,
    order,
    element: letters.element,
    dark,
    cropped: crops.length > 0,
    names,
    reshape() {
      const ruler = createRuler(doc);
      const now = letters.element?.getBoundingClientRect();
      if (!now) return;
      measuredAt = { x: now.left, y: now.top };
      // In a closed accordion letters may have boxes and still not be shown.
      const shown = letters.element?.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      for (const name of names) name.at = shown ? ruler.measure(name.points) : nowhere;
      const seen = names.filter(({ at }) => at.fragments.length > 0);
      rows = [...Map.groupBy(seen, ({ at }) => Math.round(at.fragments.at(-1)!.bottom)).values()];
      const looked = look();
      if (!looked) return;
      for (const name of names) setGlyph(name, looked.at, looked.frame.scale);
      place(looked);
    },
    move() {
      const looked = look();
      if (looked) place(looked);
    },
    undo() {
      clear();
      layer.remove();
    },
  };
}
