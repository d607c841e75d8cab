import { placeCard } from './card.ts';
import { fill } from './draw.ts';
import { underline } from './highlights.ts';
import type { Name, PaintedList } from './painted-list.ts';

/** The card of a name: by hover, focus or tap; arrow keys walk the names; Escape closes. */
export function openCards(
  win: Window & typeof globalThis,
  card: HTMLElement,
  painted: PaintedList[],
  signal: AbortSignal,
) {
  const doc = win.document;
  let open: { list: PaintedList; name: Name; unmark: () => void } | undefined;
  let timer = 0;

  const close = () => {
    win.clearTimeout(timer);
    open?.unmark();
    open?.name.button.removeAttribute('aria-describedby');
    open = undefined;
    if (card.matches(':popover-open')) card.hidePopover();
  };
  const place = () => {
    if (!open) return;
    const first = rects(doc, open.name.points).at(-1);
    if (!first) return close();
    const { left, top } = placeCard(
      first,
      { width: card.offsetWidth, height: card.offsetHeight },
      { width: win.innerWidth, height: win.innerHeight },
    );
    card.style.left = `${left}px`;
    card.style.top = `${top}px`;
  };
  const show = (list: PaintedList, name: Name) => {
    win.clearTimeout(timer);
    if (open?.name === name) return;
    close();
    card.style.colorScheme = list.dark ? 'dark' : 'light';
    fill(card, name.mark.card, list.order.shared);
    card.showPopover();
    name.button.setAttribute('aria-describedby', 'card');
    open = { list, name, unmark: underline([{ line: 'at', points: name.points }], list.dark) };
    place();
  };

  const nameAt = (event: MouseEvent) => {
    const target = event.target as Node | null;
    for (const list of painted) {
      if (!list.element || !target || !(list.element.contains(target) || target.contains(list.element)))
        continue;
      for (const name of list.names) {
        if (name.button.hidden) continue;
        if (rects(doc, name.points).some((at) => inside(at, event))) return { list, name };
      }
    }
    return undefined;
  };

  const listen = <K extends keyof DocumentEventMap>(type: K, hear: (event: DocumentEventMap[K]) => void) =>
    doc.addEventListener(type, hear, { signal, capture: true, passive: true });

  let asked = 0;
  listen('pointermove', (event) => {
    if (event.pointerType === 'touch' || asked) return;
    asked = win.requestAnimationFrame(() => {
      asked = 0;
      const over = event.composedPath().includes(card);
      if (over) return win.clearTimeout(timer);
      const hit = nameAt(event);
      win.clearTimeout(timer);
      if (hit) timer = win.setTimeout(() => show(hit.list, hit.name), open ? 60 : 140);
      else if (open && doc.activeElement !== card.getRootNode()) timer = win.setTimeout(close, 220);
    });
  });
  listen('click', (event) => {
    if (event.composedPath().includes(card)) return;
    const hit = nameAt(event);
    if (hit) show(hit.list, hit.name);
    else if (open) close();
  });
  doc.addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Escape' && open) close();
    },
    { signal, capture: true },
  );

  for (const list of painted) {
    for (const name of list.names) {
      name.button.addEventListener('focus', () => {
        reveal(win, name.points);
        show(list, name);
      });
      name.button.addEventListener('blur', close);
      name.button.addEventListener('click', () => show(list, name));
      name.button.addEventListener('keydown', (event) => {
        const shown = list.names.filter((each) => !each.button.hidden);
        const at = shown.indexOf(name);
        const steps: Record<string, number> = {
          ArrowRight: at + 1,
          ArrowDown: at + 1,
          ArrowLeft: at - 1,
          ArrowUp: at - 1,
          Home: 0,
          End: shown.length - 1,
        };
        const to = steps[event.key];
        if (to === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        const next = shown[(to + shown.length) % shown.length];
        name.button.tabIndex = -1;
        if (next) {
          next.button.tabIndex = 0;
          next.button.focus({ preventScroll: true });
        }
      });
    }
  }
  return { close, moved: place };
}

function rects(doc: Document, points: StaticRangeInit): DOMRect[] {
  if (!points.startContainer.isConnected) return [];
  const range = doc.createRange();
  range.setStart(points.startContainer, points.startOffset);
  range.setEnd(points.endContainer, points.endOffset);
  return [...range.getClientRects()];
}

const inside = (at: DOMRect, { clientX, clientY }: MouseEvent) =>
  clientX >= at.left && clientX <= at.right && clientY >= at.top - 2 && clientY <= at.bottom + 2;

/** Scrolls a name into view where it is out of it. */
function reveal(win: Window & typeof globalThis, points: StaticRangeInit) {
  const at = rects(win.document, points)[0];
  if (at && (at.top < 0 || at.bottom > win.innerHeight))
    points.startContainer.parentElement?.scrollIntoView({ block: 'center', behavior: 'instant' });
}
