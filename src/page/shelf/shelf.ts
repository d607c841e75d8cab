import type {
  BarState,
  CardState,
  ShelfActed,
  ShelfDrawn,
  ShelfFacts,
  ShelfMark,
  ShelfPage,
  UnreadReason,
} from '../../contract/shelf.ts';
import { draw, fill } from '../paint/draw.ts';
import type { Host } from '../paint/host/host.ts';
import { locate } from '../read/letters/locate.ts';
import { readClues } from '../read/product.ts';
import { watch } from '../read/watch.ts';
import { cardsIn, type ShelfCard } from './cards.ts';
import { dockBar } from './dock-bar.ts';
import { followCards } from './follow-cards.ts';
import { heldIn } from './hold-focus.ts';
import { createOverlay } from './overlay.ts';
import { createShelfReading, type Progress, type ShelfNetwork } from './read-shelf.ts';
import { drawingAround } from './under-press.ts';

/** Products asked about in one question: those in view need not wait until a whole long shelf is read and judged. */
const atOnce = 40;

/** What a shelf needs from outside. */
export type ShelfWorld = {
  window: Window & typeof globalThis;
  signal: AbortSignal;
  facts: ShelfFacts;
  host(): Host;
  network: Omit<ShelfNetwork, 'take'>;
  /** Draws marks of these products, and the bar; throws when nobody answers. */
  draw(cards: CardState[], bar: BarState): Promise<ShelfDrawn>;
  /** Reads a page that came after a press; answers why not when it holds no list of the product. */
  take(page: ShelfPage): Promise<{ why?: UnreadReason }>;
  /** An act of the background on one product, by the name its button carries; its id makes a repeated one harmless. */
  act(address: string, act: string, id: string): Promise<ShelfActed>;
  /** Whether the user was told what a press does; told once, on all pages. */
  told: boolean;
};

/** A shelf that stands in a page. */
export type Shelf = {
  /** What is remembered has changed: everything is drawn anew. */
  again(): void;
  /** A press that came from the panel, which says what it does, or a shortcut, which does not. */
  read(wasTold: boolean): void;
  /** The products of this page, for a table of them; null where there are none. */
  table(): CardState[] | null;
};

/**
 * A shelf of products: what was read before is marked at once; a press reads the rest. Looks again whenever cards
 * come, go or change places, until the signal takes everything back.
 */
export function startShelf(world: ShelfWorld): Shelf {
  const { window: win, signal, facts } = world;
  const doc = win.document;
  const marks = new Map<string, ShelfMark>();
  /** How each product was last drawn; what changed is drawn again. */
  const drawn = new Map<string, string>();
  /** What cards call their products: a virtual grid may show others when a page comes. */
  const names = new Map<string, string>();
  let cards: ShelfCard[] = [];
  let view: ReturnType<typeof make> | undefined;
  let isUnwanted = false;
  let path = win.location.pathname;
  let pressedOn = path;
  let progress: Progress = { reading: [], read: [], failed: new Map(), done: 0, of: 0, waiting: [] };
  let [open, told, hides] = [false, world.told, false];
  let filters: string[] = [];
  let turn = 0;
  let asking = false;
  let again = false;
  let toFocus = false;

  const reading = createShelfReading(
    win.location.origin,
    facts.manners,
    {
      ...world.network,
      take: async (address, came) => {
        const page = new win.DOMParser().parseFromString(came.page, 'text/html');
        const name = names.get(address) ?? '';
        const texts = [locate(page)?.sent ?? []].flat();
        const { why } = await world.take({
          address,
          name,
          at: came.address,
          texts,
          clues: { ...readClues(page), base: came.address },
          letters: (page.body?.textContent ?? '').trim().length - scriptLetters(page),
          asksPassword: page.querySelector('input[type="password"]') !== null,
        });
        return why;
      },
    },
    (now) => {
      progress = now;
      void update();
    },
  );

  const stateOf = ({ address, name }: ShelfCard): CardState => {
    const why = progress.failed.get(address);
    if (progress.reading.includes(address)) return { address, name, state: 'reading' };
    return why ? { address, name, state: 'failed', why } : { address, name, state: 'met' };
  };
  /** How it stands, and whether its page came since: that changes what the background answers. */
  const stageOf = (card: ShelfCard) =>
    `${JSON.stringify(stateOf(card))}${progress.read.includes(card.address)}`;

  const products = () => [...new Map(cards.map((card) => [card.address, card])).values()];
  const toAsk = () =>
    reading.left(products().flatMap(({ address }) => (marks.get(address)?.read ? [] : [address])));

  function barState(): BarState {
    const all = products();
    const read = all.filter(({ address }) => marks.get(address)?.read).length;
    const failed: BarState['failed'] = {};
    for (const { address } of all) {
      const why = progress.failed.get(address);
      if (why) failed[why] = (failed[why] ?? 0) + 1;
    }
    const passing: Record<string, number> = {};
    for (const { address } of all)
      for (const filter of marks.get(address)?.passes ?? []) passing[filter] = (passing[filter] ?? 0) + 1;
    return {
      open,
      products: all.length,
      read,
      left: toAsk().length,
      failed,
      ...(reading.isRunning() && {
        running: { done: progress.done, of: progress.of },
      }),
      ...(progress.ended && { ended: progress.ended.why }),
      ...(progress.ended && 'again' in progress.ended && { again: progress.ended.again }),
      told,
      filters,
      passing,
      hides,
    };
  }

  /** Asks for what changed, one question at a time. */
  async function update(): Promise<void> {
    if (asking) {
      again = true;
      return;
    }
    asking = true;
    const seen = new Set(view?.overlay.inView());
    const changed = products()
      .filter((card) => drawn.get(card.address) !== stageOf(card))
      .sort((a, b) => Number(seen.has(b.address)) - Number(seen.has(a.address)))
      .slice(0, atOnce);
    const keys = changed.map((card) => [card.address, stageOf(card)] as const);
    const now = ++turn;
    const asked = barState();
    const answer = await world.draw(changed.map(stateOf), asked).catch(() => undefined);
    asking = false;
    if (signal.aborted) return;
    if (answer && now === turn) {
      for (const [address, key] of keys) drawn.set(address, key);
      for (const mark of answer.marks) marks.set(mark.address, mark);
      if (view) view.around(() => show(answer, asked.open));
      else show(answer, asked.open);
    }
    if (again) {
      again = false;
      // Filters count what has just come.
      return update();
    }
    if (answer && changed.length > 0 && answer.marks.length > 0) return update();
  }

  function show({ lang, dir, bar }: ShelfDrawn, isOpen: boolean) {
    if (cards.length === 0 || isUnwanted) return;
    view ??= make();
    isUnwanted = !view.host.attach([]);
    if (isUnwanted) return stop();
    view.bar.lang = lang;
    view.overlay.popped.lang = lang;
    view.overlay.popped.dir = dir;
    const keepFocus = heldIn(view.bar);
    const [docked, shape] = [view.bar.className + view.bar.dir, open ? 'bar' : 'bar tab'];
    view.bar.className = shape;
    view.bar.dir = dir;
    fill(view.bar, bar, []);
    if (docked !== shape + dir) dockBar(view.bar, win);
    keepFocus();
    if (isOpen && toFocus) {
      toFocus = false;
      view.bar.querySelector<HTMLElement>('.main')?.focus();
    }
    view.overlay.show(cards, marks);
    view.overlay.filter(filters, hides);
  }

  function make() {
    const host = world.host();
    host.attach([]);
    const ending = new AbortController();
    const until = AbortSignal.any([signal, ending.signal]);
    const overlay = createOverlay(host, until);
    const bar = draw([
      'section',
      { class: 'bar', popover: 'manual', tabindex: -1, 'aria-labelledby': 'shelf-bar' },
    ]);
    host.root.append(bar);
    bar.showPopover();
    win.addEventListener('resize', () => dockBar(bar, win), { signal: until, passive: true });
    for (const element of [bar, overlay.popped])
      element.addEventListener('click', (event) => event.isTrusted && press(event), { signal: until });
    return { overlay, bar, host, ending, around: drawingAround(host.root, win, until) };
  }

  function press(event: Event) {
    const button = (event.target as Element).closest<HTMLElement>('[data-does]');
    const { does, which = '' } = button?.dataset ?? {};
    if (!does || !view) return;
    event.stopPropagation();
    if (does === 'read') void read();
    else if (does === 'cancel') reading.cancel();
    else if (does === 'fold') open = !open;
    else if (does === 'hide') hides = !hides;
    else if (does === 'filter')
      filters = filters.includes(which) ? filters.filter((each) => each !== which) : [...filters, which];
    else return void act(which);
    void update();
  }

  async function act(which: string) {
    const popped = view?.overlay.popped;
    const address = popped?.dataset.address ?? '';
    const { said } = await world.act(address, which, win.crypto.randomUUID()).catch(() => ({ said: [] }));
    if (popped?.dataset.address === address && said.length > 0) view?.overlay.say(said);
  }

  /** What is in view comes first, the rest of the page after it. */
  function read() {
    told = true;
    open = true;
    pressedOn = win.location.pathname;
    const left = new Set(toAsk());
    const first = (view?.overlay.inView() ?? []).filter((address) => left.has(address));
    return reading.press([...first, ...left]);
  }

  function look() {
    const found = cardsIn(doc, win.location.href, facts);
    const same =
      found.length === cards.length &&
      found.every(
        ({ element, address }, i) => element === cards[i]!.element && address === cards[i]!.address,
      );
    cards = found;
    for (const { address, name } of found) names.set(address, name);
    following.now(found);
    moveOn();
    if (found.length === 0) return clear();
    view?.overlay.show(cards, marks);
    // A page may by now keep something in its corner.
    if (view && !open) dockBar(view.bar, win);
    if (!same) void update();
  }

  /** The page's own script led to another shelf: what was asked for the one before is not asked on, nor spoken of. */
  function moveOn() {
    const { pathname } = win.location;
    if (pathname !== path && progress.ended?.why !== 'shop-busy') delete progress.ended;
    path = pathname;
    if (!reading.isRunning() || pathname === pressedOn) return;
    const asked = new Set([...progress.waiting, ...progress.reading]);
    if (!cards.some(({ address }) => asked.has(address))) reading.leave();
  }

  function redraw() {
    drawn.clear();
    if (cards.length > 0) void update();
  }
  function clear() {
    view?.ending.abort();
    view?.host.remove();
    view = undefined;
  }
  function stop() {
    reading.cancel();
    clear();
  }
  const watching = watch(win, signal, () => look());
  const following = followCards(doc, signal, () => {
    view?.overlay.check();
    watching.stir();
  });
  // A product opened in another tab may have been read there.
  doc.addEventListener('visibilitychange', () => doc.visibilityState === 'visible' && redraw(), { signal });
  signal.addEventListener('abort', stop);
  look();

  return {
    again: redraw,
    read(wasTold) {
      if (cards.length === 0) return;
      if (told || wasTold) return void read();
      open = true; // the bar says first what a press does, and waits for it
      toFocus = true; // once it stands open: another question may be on its way
      void update();
    },
    table: () => (cards.length > 0 ? products().map(stateOf) : null),
  };
}

/** Letters of scripts and styles, which a page does not show. */
function scriptLetters(page: Document): number {
  let letters = 0;
  for (const each of page.querySelectorAll('script,style,noscript,template'))
    letters += (each.textContent ?? '').length;
  return letters;
}
