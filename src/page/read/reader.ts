import type { ListOrder, PageText, ProductClues } from '../../contract/messages.ts';
import type { PaintOrder } from '../../contract/paint-order.ts';
import type { Painter } from '../paint/painter.ts';
import { gate } from './gate.ts';
import { inSlices, type Work } from './in-slices.ts';
import { lettersOf, type NodePiece, piecesOf } from './letters/letters.ts';
import { type Located, locating } from './letters/locate.ts';
import { locateChosen, locateRange, looseLetters } from './letters/pointed-at.ts';
import { gatheringClues } from './product.ts';
import { watch } from './watch.ts';

/** What reading a page needs from outside. */
export type ReaderWorld = {
  window: Window & typeof globalThis;
  signal: AbortSignal;
  /** Sends letters of this page and brings the lists to paint; throws when nobody answers. */
  read(texts: PageText[], clues: ProductClues): Promise<ListOrder[]>;
  /** The page has no lists any more. */
  left(): Promise<unknown>;
  /** Selectors of elements that hold this site's lists, as the user pointed them out. */
  listsAt(): Promise<string[]>;
  /** Test builds measure: `begin`, `known` (where lists may be), `asked`, `answered`, `ready`, `painted`. */
  mark?(what: string): void;
  /** The painter is a file of its own, brought along with what to paint. */
  painter(): Painter | undefined;
  /** Whether the extension still stands behind this script: an update leaves it alone in the page. */
  isHere(): boolean;
  /** Something came into the page, or it moved on. */
  stirred?(): void;
};

/**
 * Reads a page and goes on reading it: locate → ask → paint, again whenever something came or the page moved
 * on, until the signal takes everything back.
 */
export function startReader(world: ReaderWorld) {
  const { window: win, signal } = world;
  const doc = win.document;
  let painter: Painter | undefined;
  let sent: unknown[] = []; // letters and nodes that were asked about
  let shown: { orders: ListOrder[] | undefined; at: Text[] } = nothing; // what is painted, and at which nodes
  let selected: Located | undefined;
  let selectors: string[] = [];
  let address = '';
  let asked = 0;

  /** The shipped build holds none of this. */
  const marks = import.meta.env?.MODE !== 'production';
  const mark = (what: string) => {
    if (marks) world.mark?.(what);
  };

  let looks = false; // a look at the page is under way
  const pass = (always: boolean) => {
    if (looks) return void setTimeout(pass, 99, always);
    looks = true;
    inSlices(looking(always), (took) => {
      looks = false;
      watching.rest(took);
    });
  };

  function* looking(always: boolean): Work<void> {
    mark('begin');
    if (selected?.nodes[0]?.isConnected === false) selected = undefined;
    // What the user pointed at comes first; what is found beside it stays.
    // The first look leaves shadow roots to the watch, which looks for them when the page has time.
    const seen = yield* locating(doc, address ? undefined : []);
    const found = [selected ?? [], locateChosen(doc, selectors), seen ?? []].flat();
    const letters = found.flatMap((each) => [each.sent.text, ...each.nodes]);
    const moved = address !== win.location.href;
    address = win.location.href;
    if (!always && !moved && sameEach(letters, sent)) return;
    sent = letters;
    mark('known');
    yield;
    // In a frame the page around it says what the product is; its data speaks for that page's own lists.
    const page = win.top?.document ?? doc;
    const clues = found.length > 0 && (yield* gatheringClues(page));
    if (signal.aborted) return;
    const inData = clues && page === doc && (clues.data[0] || clues.properties[0]);
    if (clues && (inData || found.some((each) => each.sent.text))) return void ask(found, clues, moved);
    asked++;
    if (shown.orders?.[0] || moved) void world.left().catch(() => undefined);
    shown = nothing;
    painter?.clear();
  }

  const ask = async (found: Located[], clues: ProductClues, moved: boolean) => {
    const turn = ++asked;
    mark('asked');
    const texts = found.map((each) => each.sent);
    const orders = await world.read(texts, clues).catch(() => undefined);
    if (signal.aborted || turn !== asked) return;
    mark('answered');
    if (!orders) sent = []; // asked again when the page next stirs
    const nodes = found.map((each) => each.nodes);
    const lists = (orders ?? []).flatMap(({ places, ...order }) =>
      (places[0] ? places : [undefined]).map((place) => ({ order, pieces: piecesOf(place, nodes) })),
    );
    const at = lists.flatMap(({ pieces }) => pieces.map(({ node }) => node));
    if (!moved && sameEach(at, shown.at) && drawn(orders) === drawn(shown.orders)) return;
    shown = { orders, at };
    show(lists);
  };

  const show = (lists: { order: PaintOrder; pieces: NodePiece[] }[]) => {
    if (!lists[0]) return painter?.clear();
    painter ??= world.painter();
    const ready = lists.map(({ pieces, order }) => ({ id: order.list, order, letters: lettersOf(pieces) }));
    mark('ready');
    const painted = painter?.show(ready);
    if (marks) void painted?.then(() => mark('painted'));
    watching.mark(ready.flatMap(({ letters }) => letters.element ?? []));
  };

  const watching = watch(win, signal, (came) => {
    if (!world.isHere()) return;
    world.stirred?.();
    const left = came === 'moved-on' && address !== win.location.href;
    if (left) selected = undefined;
    // The browser forgot what this tab shows while another page was in its place.
    if (typeof came === 'string') pass(left || came === 'restored');
    else if (came.added.some(gate)) pass(false);
  });
  signal.addEventListener('abort', () => painter?.clear());
  const start = async (always: boolean) => {
    selectors = await world.listsAt();
    if (!signal.aborted) pass(always);
  };
  void start(false);

  return {
    /** Asks again for everything: what is remembered has changed. */
    again: () => void start(true),
    jump: () => painter?.jump(),
    /** Reads the selected letters as a list; the letters alone where they stand in no text of the page. */
    readSelection(text: string) {
      const selection = win.getSelection();
      if (!selection || selection.isCollapsed) return;
      selected = locateRange(selection.getRangeAt(0), 'selection') ?? looseLetters(text, 'selection');
      pass(true);
    },
  };
}

const nothing = { orders: undefined, at: [] };
/** What is drawn, wherever its nodes stand among those sent. */
const drawn = (orders: ListOrder[] | undefined) =>
  JSON.stringify(orders, (key, value) => (key === 'node' ? undefined : value));
const sameEach = (a: unknown[], b: unknown[]): boolean =>
  a.length === b.length && a.every((each, i) => each === b[i]);
