import { placeCard } from './card.ts';
import { doc } from './doc.ts';
import { fill, put } from './draw.ts';
import { underline } from './highlights.ts';
import type { PaintedList, PaintedName } from './painted-list.ts';
import { isInView } from './where/blank.ts';
import { boxesOf, isIn } from './where/letter-boxes.ts';
import { isCovered, isOurs } from './where/visibility.ts';

/**
 * The card of a name: by hover, focus or tap; arrow keys walk the names; Escape closes.
 * @returns what puts an open card by its name again
 */
export function openCards(card: HTMLElement, painted: PaintedList[], signal: AbortSignal) {
  let open: { name: PaintedName; unmark: () => void } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

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
  const show = ({ scheme, order }: PaintedList, name: PaintedName) => {
    clearTimeout(timer);
    if (open?.name === name) return;
    close();
    card.style.colorScheme = scheme;
    fill(card, name.mark.card, order.shared);
    card.showPopover();
    name.button.ariaDescribedByElements = [card];
    open = { name, unmark: underline('at', name.points, scheme) };
    place();
  };

  /** What shows the card of the name whose letters are seen under the pointer, if any are. */
  const nameAt = ({ target, clientX: x, clientY: y }: MouseEvent): (() => void) | undefined => {
    if (isOurs(target as Element)) return undefined;
    for (const list of painted)
      for (const name of isIn(list.box(), x, y, 2) ? list.names : [])
        if (boxesOf(name.points).some((at) => isIn(at, x, y, 1)) && !isCovered(name.points, x, y))
          return () => show(list, name);
    return undefined;
  };

  const options = { signal, capture: true, passive: true };
  doc.addEventListener(
    'pointermove',
    (event) => {
      if (!event.isTrusted || event.pointerType === 'touch') return;
      clearTimeout(timer);
      if (card.matches(':hover')) return;
      const showIt = nameAt(event);
      // Resting on a name opens its card, sooner where one is open; leaving it closes it in a while.
      if (showIt) timer = setTimeout(showIt, open ? 60 : 140);
      else if (open) timer = setTimeout(close, 220);
    },
    options,
  );
  doc.addEventListener(
    'click',
    (event) => {
      if (event.isTrusted && !card.matches(':hover')) (nameAt(event) ?? close)();
    },
    options,
  );
  doc.addEventListener('keydown', ({ key, isTrusted }) => isTrusted && key === 'Escape' && close(), options);

  for (const list of painted) {
    const hear = (type: string, does: (name: PaintedName, event: Event) => void) =>
      list.toolbar.addEventListener(
        type,
        (event) => event.isTrusted && does(list.names.find(({ button }) => button === event.target)!, event),
      );
    hear('focusin', (name) => {
      const [at] = boxesOf(name.points);
      if (at && !isInView(at))
        name.points.startContainer.parentElement?.scrollIntoView({ block: 'center', behavior: 'instant' });
      show(list, name);
    });
    hear('focusout', close);
    hear('click', (name) => show(list, name));
    hear('keydown', (name, event) => {
      const shown = list.names.filter(({ button }) => !button.hidden);
      const at = shown.indexOf(name);
      const steps: Record<string, number> = {
        ArrowRight: at + 1,
        ArrowDown: at + 1,
        ArrowLeft: at - 1,
        ArrowUp: at - 1,
        Home: 0,
        End: -1,
      };
      const step = steps[(event as KeyboardEvent).key];
      if (step === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      const { button } = shown.at(step % shown.length)!;
      name.button.tabIndex = -1;
      button.tabIndex = 0;
      button.focus({ preventScroll: true });
    });
  }
  signal.addEventListener('abort', close);
  return place;
}
