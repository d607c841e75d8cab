import type { FoundText, ProductClues } from '../messages.ts';
import type { PaintOrder, StripAction } from '../ui/paint-order.ts';
import type { FoundList } from './find-lists.ts';
import type { Finder } from './finder.ts';
import { gate } from './gate.ts';
import type { Painter } from './paint/painter.ts';
import { watch } from './watch.ts';

/** What reading a page needs from outside. */
export type ReaderWorld = {
  window: Window & typeof globalThis;
  signal: AbortSignal;
  /** Sends the lists of this page and brings what to paint; throws when nobody answers. */
  read(lists: FoundText[], clues: ProductClues | undefined): Promise<PaintOrder[]>;
  /** The page has no lists any more. */
  left(): Promise<unknown>;
  /** Selectors of elements that hold this site's lists, as the reader pointed them out. */
  listsAt(): Promise<string[]>;
  act(list: number, action: StripAction): void;
  /** Test builds measure: `begin`, `gated`, `find`, `known`, `painted`, `looked`. */
  mark?(what: string): void;
  /** The finder is a second file, asked for when the gate lets a page through. */
  finder(): Promise<Finder | undefined>;
  /** The painter is a third, brought along with what to paint. */
  painter(act: (list: number, action: StripAction) => void): Painter | undefined;
};

/**
 * Reads a page and goes on reading it: gate → find → ask → paint, again whenever something came or the page
 * moved on, until the signal takes everything back.
 */
export function startReader(world: ReaderWorld) {
  const { window: win, signal } = world;
  const doc = win.document;
  let finder: Finder | undefined;
  let painter: Painter | undefined;
  let known: FoundList[] = [];
  let selected: FoundList | undefined;
  let selectors: string[] = [];
  let address = '';
  let asked = 0;

  const pass = (always: boolean) => {
    const pointedAt = selected !== undefined || selectors.length > 0;
    world.mark?.('begin');
    const open = pointedAt || gate(doc);
    world.mark?.('gated');
    if (!open) return settle([], always);
    void bringFinder().then((came) => came && settle(listsNow(came), always));
  };

  const bringFinder = async () => {
    finder ??= await world.finder().catch(() => undefined);
    return signal.aborted ? undefined : finder;
  };

  /** What the reader pointed at comes first; what was found beside it stays. */
  const listsNow = ({ findLists, listsAt }: Finder) => {
    if (selected && !selected.ranges[0]?.startContainer.isConnected && selected.ranges.length > 0)
      selected = undefined;
    const pointed = [...(selected ? [selected] : []), ...listsAt(doc, selectors)];
    world.mark?.('find');
    const found = findLists(doc).filter(({ text }) => pointed.every((each) => !each.text.includes(text)));
    world.mark?.('known');
    return [...pointed, ...found];
  };

  const settle = (found: FoundList[], always: boolean) => {
    const moved = address !== win.location.href;
    address = win.location.href;
    if (!always && !moved && sameLists(found, known)) return;
    const before = known;
    known = found;
    if (found.length === 0) {
      painter?.clear();
      if (before.length > 0 || moved) void world.left().catch(() => undefined);
      return;
    }
    void send(found);
  };

  const send = async (found: FoundList[]) => {
    const turn = ++asked;
    const texts = found.map(({ text, via, product }, id) => ({ id, text, via, ...(product && { product }) }));
    const orders = await world.read(texts, finder?.readClues(doc)).catch(() => undefined);
    if (signal.aborted || turn !== asked) return;
    const lists = (orders ?? []).flatMap((order) => {
      const list = found[order.list];
      if (!list || !order.isList) return [];
      // Copies of the same letters are all painted: which one is in view is the page's affair.
      const places = list.places.filter(({ text, pieces }) => text === list.text && pieces.length > 0);
      return (places.length > 0 ? places : [list]).map((place) => ({
        id: order.list,
        letters: finder!.lettersOf(place),
        order,
      }));
    });
    if (lists.length === 0) return painter?.clear();
    painter ??= world.painter(world.act);
    await painter?.show(lists);
    world.mark?.('painted');
    watching.mark(lists.flatMap((list) => list.letters.element ?? []));
  };

  const watching = watch(win, signal, (came) => {
    if (came === 'moved-on' && address !== win.location.href) selected = undefined;
    if (came === 'moved-on') pass(address !== win.location.href);
    else if (came === 'much' || came === 'changed') pass(false);
    else if (came.added.some((element) => gate(element) && (!finder || finder.findLists(element).length > 0)))
      pass(false);
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
    async readSelection(text: string) {
      const selection = win.getSelection();
      const came = await bringFinder();
      if (!came || !selection || selection.isCollapsed) return;
      selected = came.listOfRange(selection.getRangeAt(0), 'selection') ?? {
        text,
        via: 'selection',
        ranges: [],
        pieces: [],
        places: [],
      };
      settle(listsNow(came), true);
    },
  };
}

/** The same letters in the same nodes: nothing to paint anew. */
function sameLists(a: FoundList[], b: FoundList[]): boolean {
  return (
    a.length === b.length &&
    a.every((list, i) => {
      const other = b[i]!;
      return (
        list.text === other.text &&
        list.ranges.length === other.ranges.length &&
        list.ranges.every((range, r) => {
          const before = other.ranges[r]!;
          return (
            range.startContainer === before.startContainer &&
            range.endContainer === before.endContainer &&
            range.startOffset === before.startOffset &&
            range.endOffset === before.endOffset
          );
        })
      );
    })
  );
}
