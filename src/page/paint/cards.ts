import { placeCard } from './card.ts';
import { fill, put } from './draw.ts';
import { underline } from './highlights.ts';
import { boxesOf, isIn } from './letter-boxes.ts';
import type { Name, PaintedList } from './painted-list.ts';
import { isCovered, isOurs } from './sight.ts';

// Milliseconds at a name until its card opens, until the next one's does, and away from it until it closes.
const [opens, opensNext, closes] = [140, 60, 220];

/**
 * The card of a name: by hover, focus or tap; arrow keys walk the names; Escape closes.
 * @returns what puts an open card by its name again
 */
export function openCards(card: HTMLElement, painted: PaintedList[], signal: AbortSignal) {
  let open: { name: Name; unmark: () => void } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let asked = false;

  const close = () => {
    clearTimeout(timer);
    if (!open) return;
    open.unmark();
    open.name.button.ariaDescribedByElements = null;
    open = undefined;
    if (card.matches(':popover-open')) card.hidePopover();
  };
  const place = () => {
    if (!open) return;
    const at = boxesOf(open.name.points).at(-1);
    if (!at) return close();
    put(card, placeCard(at, card.getBoundingClientRect(), { width: innerWidth, height: innerHeight }));
  };
  const show = ({ dark, order }: PaintedList, name: Name) => {
    clearTimeout(timer);
    if (open?.name === name) return;
    close();
    card.style.colorScheme = dark ? 'dark' : 'light';
    fill(card, name.mark.card, order.shared);
    card.showPopover();
    name.button.ariaDescribedByElements = [card];
    open = { name, unmark: underline('at', name.points, dark) };
    place();
  };

  /** Shows the card of the name at a point where it can be seen, at once or in a while; else says so. */
  const nameAt = ({ target, clientX: x, clientY: y }: MouseEvent): (() => void) | undefined => {
    if (isOurs(target as Element)) return undefined;
    for (const list of painted)
      for (const name of isIn(list.box(), x, y, 2) ? list.names : [])
        if (boxesOf(name.points).some((at) => isIn(at, x, y, 1)) && !isCovered(name.points, x, y))
          return () => show(list, name);
    return undefined;
  };

  const options = { signal, capture: true, passive: true };
  document.addEventListener(
    'pointermove',
    (event) => {
      if (event.pointerType === 'touch' || asked) return;
      asked = true;
      requestAnimationFrame(() => {
        asked = false;
        clearTimeout(timer);
        if (signal.aborted || card.matches(':hover')) return;
        const showIt = nameAt(event);
        if (showIt) timer = setTimeout(showIt, open ? opensNext : opens);
        else if (open) timer = setTimeout(close, closes);
      });
    },
    options,
  );
  document.addEventListener(
    'click',
    (event) => {
      if (!card.matches(':hover')) (nameAt(event) ?? close)();
    },
    options,
  );
  document.addEventListener('keydown', ({ key }) => key === 'Escape' && close(), options);

  for (const list of painted) {
    const nameOf = ({ target }: Event) => list.names.find(({ button }) => button === target)!;
    const hear = <K extends keyof HTMLElementEventMap>(
      type: K,
      does: (event: HTMLElementEventMap[K]) => void,
    ) => list.toolbar.addEventListener(type, does);
    hear('focusin', (event) => {
      reveal(nameOf(event).points);
      show(list, nameOf(event));
    });
    hear('focusout', close);
    hear('click', (event) => show(list, nameOf(event)));
    hear('keydown', (event) => {
      const shown = list.names.map(({ button }) => button).filter(({ hidden }) => !hidden);
      const button = event.target as HTMLElement;
      const at = shown.indexOf(button);
      const steps: Record<string, number> = {
        ArrowRight: at + 1,
        ArrowDown: at + 1,
        ArrowLeft: at - 1,
        ArrowUp: at - 1,
        Home: 0,
        End: -1,
      };
      const next = shown.at(steps[event.key]! % shown.length);
      if (!(event.key in steps) || !next) return;
      event.preventDefault();
      event.stopPropagation();
      button.tabIndex = -1;
      next.tabIndex = 0;
      next.focus({ preventScroll: true });
    });
  }
  signal.addEventListener('abort', close);
  return place;
}

/** Scrolls a name into view where it is out of it. */
function reveal(points: StaticRangeInit) {
  const at = boxesOf(points)[0];
  if (at && (at.top < 0 || at.bottom > innerHeight))
    points.startContainer.parentElement?.scrollIntoView({ block: 'center', behavior: 'instant' });
}
