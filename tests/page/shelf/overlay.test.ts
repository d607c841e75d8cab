// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { ShelfMark } from '../../../src/contract/shelf.ts';
import type { ShelfCard } from '../../../src/page/shelf/cards.ts';
import { createOverlay } from '../../../src/page/shelf/overlay.ts';

const box = { left: 10, top: 10, right: 110, bottom: 110, width: 100, height: 100 } as DOMRect;
const root = document.createElement('div');
let ending: AbortController;
let overlay: ReturnType<typeof createOverlay>;
let isOpen = false;

/** A card of the page with its picture. */
function cardOf(address: string): ShelfCard {
  const element = document.createElement('article');
  element.innerHTML = `<a href="${address}"><img alt=""></a>`;
  const [link, picture] = [element.querySelector('a')!, element.querySelector('img')!];
  element.getBoundingClientRect = () => box;
  picture.getBoundingClientRect = () => box;
  document.body.append(element);
  return { element, link, href: address, picture, address, name: address } as ShelfCard;
}
const markOf = (address: string): ShelfMark => ({
  address,
  label: address,
  mark: ['span', {}],
  card: [['p', {}, address]],
  passes: [],
  read: true,
});
/** As the reader's own pointer: the page's made-up events are not heard. */
function point(type: string, target: Element) {
  const event = new Event(type);
  Object.defineProperty(event, 'isTrusted', { value: true });
  target.dispatchEvent(event);
}
const marks = () => [...root.querySelectorAll('.mark')];

beforeEach(() => {
  vi.useFakeTimers();
  document.body.replaceChildren();
  Object.getPrototypeOf(document).elementsFromPoint = () => [];
  // Every card is in view.
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(readonly tell: (changes: { target: Element; isIntersecting: boolean }[]) => void) {}
      observe = (target: Element) => this.tell([{ target, isIntersecting: true }]);
      unobserve() {}
      disconnect() {}
    },
  );
  ending = new AbortController();
  const frame = () => ({ x: 0, y: 0, scale: 1 });
  const host = { root, frame, attach: () => true, remove: () => {} };
  root.replaceChildren();
  overlay = createOverlay(host, ending.signal);
  const matches = overlay.popped.matches.bind(overlay.popped);
  const asked = (selector: string) =>
    selector === ':popover-open' ? isOpen : selector === ':hover' ? false : matches(selector);
  overlay.popped.matches = asked as typeof matches;
  overlay.popped.showPopover = () => {
    isOpen = true;
  };
  overlay.popped.hidePopover = () => {
    isOpen = false;
  };
  const cards = ['/a', '/b'].map(cardOf);
  overlay.show(cards, new Map(['/a', '/b'].map((address) => [address, markOf(address)])));
  vi.advanceTimersByTime(50);
});
afterEach(() => {
  ending.abort();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

it('a card opens where the pointer rests, though what came of an act on the one before is told meanwhile', () => {
  const [first, second] = marks();
  point('pointerenter', first!);
  vi.advanceTimersByTime(200);
  expect([isOpen, overlay.popped.dataset.address]).toEqual([true, '/a']);
  point('pointerleave', overlay.popped); // after a press there
  expect(isOpen).toBe(false);
  point('pointerenter', second!);
  overlay.say([['span', {}, 'Kept.']]);
  vi.advanceTimersByTime(200);
  expect([isOpen, overlay.popped.dataset.address]).toEqual([true, '/b']);
  expect(overlay.popped.querySelector('.said')).toBeNull();
});

it('what came of an act is told on the card that is open', () => {
  point('pointerenter', marks()[0]!);
  vi.advanceTimersByTime(200);
  overlay.say([['span', {}, 'Kept.']]);
  expect(overlay.popped.querySelector<HTMLElement>('.said [data-t]')!.dataset.t).toBe('Kept.');
});
