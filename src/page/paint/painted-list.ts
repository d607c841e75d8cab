import { glyphs } from '../../ui/glyphs/shapes.ts';
import type { PaintOrder } from '../../ui/paint-order.ts';
import type { Letters } from '../letters.ts';
import { drawGlyph, element } from './element.ts';
import { underline } from './highlights.ts';
import type { Host } from './host.ts';
import { createRuler, type Measured } from './measure.ts';
import { placeGlyph } from './place.ts';

/** One name on the page: its button (a glyph that can be focused) and where it stood when last measured. */
export type Name = { button: HTMLElement; index: number; points: StaticRangeInit; at: Measured };

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
const sizes = { small: 0.62, medium: 0.74, large: 0.92 };

/** Underlines the names of one list and sets a glyph by each. */
export function paintList(
  doc: Document,
  host: Host,
  { id, letters, order }: { id: number; letters: Letters; order: PaintOrder },
): PaintedList {
  const { scheme, marks } = order;
  const wanted = marks.flatMap((mark, index) => {
    const points = letters.points(mark.from, mark.to);
    const shown = mark.line === 'moisture' ? scheme.moisture : scheme.protein;
    return points && shown ? [{ mark, index, points }] : [];
  });
  const dark = wanted[0] ? createRuler(doc).isDark(wanted[0].points) : false;
  const clear = underline(
    wanted.map(({ mark, points }) => ({ line: mark.line, points })),
    dark,
  );
  const layer = element(doc, 'div', { class: 'layer', style: `color-scheme: ${dark ? 'dark' : 'light'}` });
  const inner = element(doc, 'div', { class: 'names', role: 'toolbar', 'aria-label': order.words.names });
  const size = sizes[scheme.glyphSize];
  const names: Name[] = wanted.map(({ mark, index, points }, i) => {
    const button = element(
      doc,
      'button',
      {
        class: 'name',
        type: 'button',
        tabindex: i === 0 ? 0 : -1,
        'aria-label': `${mark.card.title}: ${mark.card.kind}`,
        'data-index': index,
        hidden: true,
      },
      drawGlyph(doc, mark.glyphs[0]!),
    );
    return { button, index, points, at: { fragments: [], spot: undefined } };
  });
  inner.append(...names.map((name) => name.button));
  layer.append(inner);
  host.root.append(layer);
  const crops = croppers(letters.element);
  let origin = { x: 0, y: 0 };

  const place = () => {
    const frame = host.frame();
    const now = letters.element?.getBoundingClientRect();
    if (!now) return;
    const crop = cropOf(crops);
    const [x, y] = crop ? [crop.left, crop.top] : [now.left, now.top];
    const local = (px: number, from: number) => (px - from) / frame.scale;
    layer.classList.toggle('cropped', crop !== undefined);
    layer.style.width = crop ? `${crop.width / frame.scale}px` : '0px';
    layer.style.height = crop ? `${crop.height / frame.scale}px` : '0px';
    layer.style.transform = `translate(${local(x, frame.x)}px, ${local(y, frame.y)}px)`;
    inner.style.transform = `translate(${local(now.left, x)}px, ${local(now.top, y)}px)`;
    origin = { x: now.left, y: now.top };
  };

  const cover = () => {
    const now = letters.element?.getBoundingClientRect();
    if (!now) return;
    const [dx, dy] = [now.left - measuredAt.x, now.top - measuredAt.y];
    const covered = names.map(({ at, points }) => {
      const last = at.fragments.at(-1);
      return (
        last !== undefined && isCovered(doc, points, last.right + dx - 2, last.bottom + dy - last.height / 2)
      );
    });
    for (const [i, { button }] of names.entries())
      button.toggleAttribute('data-covered', covered[i] === true);
  };

  let measuredAt = origin;
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
      const { scale } = host.frame();
      if (!now) return;
      measuredAt = { x: now.left, y: now.top };
      // In a closed accordion letters may have boxes and still not be shown.
      const shown = letters.element?.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      for (const name of names) name.at = shown ? ruler.measure(name.points) : nowhere;
      for (const { button, at, index } of names) {
        const last = at.fragments.at(-1);
        button.hidden = last === undefined;
        if (!last) continue;
        button.style.left = `${(last.left - now.left) / scale}px`;
        button.style.top = `${(last.top - now.top) / scale}px`;
        button.style.width = `${last.width / scale}px`;
        button.style.height = `${last.height / scale}px`;
        const glyph = button.firstElementChild as SVGElement | null;
        const shape = glyphs[marks[index]!.glyphs[0]!];
        const box =
          at.spot && placeGlyph(at.spot, { width: shape.width * size, height: shape.height * size });
        if (!glyph) continue;
        glyph.style.display = box ? 'block' : 'none';
        if (!box) continue;
        glyph.style.left = `${(box.x - last.left) / scale}px`;
        glyph.style.top = `${(box.y - last.top) / scale}px`;
        glyph.setAttribute('width', String(box.width / scale));
        glyph.setAttribute('height', String(box.height / scale));
      }
      place();
      cover();
    },
    move() {
      place();
      cover();
    },
    undo() {
      clear();
      layer.remove();
    },
  };
}

/** Ancestors that crop what they hold. */
function croppers(from: Element | undefined): Element[] {
  const found: Element[] = [];
  for (let at: Element | null | undefined = from; at && at !== at.ownerDocument.body; at = parentOf(at)) {
    const { overflowX, overflowY, display } = getComputedStyle(at);
    if (display !== 'inline' && (overflowX !== 'visible' || overflowY !== 'visible')) found.push(at);
  }
  return found;
}

function parentOf(element: Element): Element | null {
  const root = element.getRootNode();
  return element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

function cropOf(crops: Element[]): DOMRect | undefined {
  let [left, top, right, bottom] = [-1e5, -1e5, 1e5, 1e5];
  if (crops.length === 0) return undefined;
  for (const each of crops) {
    const at = each.getBoundingClientRect();
    left = Math.max(left, at.left);
    top = Math.max(top, at.top);
    right = Math.min(right, at.right);
    bottom = Math.min(bottom, at.bottom);
  }
  return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
}

/** Whether something of the page stands over the letters (a sticky header, a menu). Out of view: not known, so no. */
function isCovered(doc: Document, points: StaticRangeInit, x: number, y: number): boolean {
  const holder = points.endContainer.parentElement;
  const root = holder?.getRootNode();
  const hit = (root instanceof ShadowRoot ? root : doc).elementFromPoint(x, y);
  if (!hit || !holder || hit.localName === 'strandline-label') return false;
  return !holder.contains(hit) && !hit.contains(holder);
}
