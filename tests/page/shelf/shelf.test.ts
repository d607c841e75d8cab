// @vitest-environment happy-dom
// @vitest-environment-options { "url": "https://shop.example/" }
// A shelf in its page, the background answered by hand.
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import type { BarState, ShelfDrawn } from '../../../src/contract/shelf.ts';
import { type ShelfWorld, startShelf } from '../../../src/page/shelf/shelf.ts';
import { shelves } from './shelves.ts';

let ending: AbortController;
let root: ShadowRoot;
let asked: { bar: BarState; answer(): void }[];

beforeEach(() => {
  document.body.innerHTML = shelves[0]!.html;
  Object.getPrototypeOf(document).elementsFromPoint = () => [];
  HTMLElement.prototype.showPopover = () => {};
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      observe() {}
      unobserve() {}
      disconnect() {}
    },
  );
  const host = document.createElement('div');
  document.body.append(host);
  root = host.attachShadow({ mode: 'open' });
  ending = new AbortController();
  asked = [];
});
afterEach(() => {
  ending.abort();
  vi.unstubAllGlobals();
});

/** As the background draws it: a tab until it stands open, then with the button that reads. */
const drawnOf = ({ open }: BarState): ShelfDrawn => ({
  lang: 'en',
  dir: 'ltr',
  marks: [],
  bar: open ? [['button', { class: 'main', 'data-does': 'read' }]] : [['button', { 'data-does': 'fold' }]],
});

const world = (): ShelfWorld => ({
  window,
  signal: ending.signal,
  facts: shelfFacts,
  host: () =>
    ({ root, frame: () => ({ x: 0, y: 0, scale: 1 }), attach: () => true, remove: () => {} }) as never,
  network: {} as ShelfWorld['network'],
  draw: (_, bar) =>
    new Promise((drawn) => {
      asked.push({ bar, answer: () => drawn(drawnOf(bar)) });
    }),
  take: async () => ({}),
  act: async () => ({ said: [] }) as never,
  told: false,
});

it('a press of the keys while the first question is on its way opens the bar with the focus on what reads', async () => {
  const shelf = startShelf(world());
  shelf.read(false);
  expect(asked.map(({ bar }) => bar.open)).toEqual([false]);
  asked[0]!.answer();
  await vi.waitFor(() => expect(asked.map(({ bar }) => bar.open)).toEqual([false, true]));
  expect(root.activeElement).toBeNull();
  asked[1]!.answer();
  await vi.waitFor(() => expect((root.activeElement as HTMLElement | null)?.dataset.does).toBe('read'));
});
