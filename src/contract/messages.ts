import type { Said } from '../core/judge/finding.ts';
import type { Known } from '../core/names/lookup.ts';
import type { NameHit } from '../core/names/search-names.ts';
import type { ProductFacts } from '../core/product/product.ts';
import type { Reading, ReadOptions } from '../core/reading/reading.ts';
import type { RememberedParts, Stamps } from '../store/parts.ts';
import type { Act } from '../use/acts/acts.ts';
import type { Drawing, PaintOrder, StripAction } from './paint-order.ts';
import type {
  BarState,
  CardState,
  ShelfActed,
  ShelfDrawn,
  ShelfPage,
  ShelfRow,
  UnreadReason,
} from './shelf.ts';
import { triedAgain } from './tried-again.ts';

/**
 * Letters of a page and enough of its build to tell a list from what is around it, as the page's script sends
 * them. Block edges and `<br>` are "\n", edges of neighbouring inline elements "\v"; else letters stand one for
 * one, so an offset in `text` is an offset in a text node.
 */
export type PageText = {
  text: string;
  /** For each text node: offset in `text` of its first letter, how many it has, the element around it. */
  starts: number[];
  lengths: number[];
  parents: number[];
  /** Elements around the letters, parents before children. */
  elements: Holder[];
  /** The user pointed at these letters: a list, whatever its names. */
  pointed?: { from: number; to: number; via: 'selection' | 'chosen' };
};

/** One element around letters of a page; `parent` is its place in `elements`, −1 at the top. */
export type Holder = { tag: string; parent: number; role?: string; hidden?: boolean; label?: string };

/** Where a list stands in what the page sent: letters `from … from + length` of its text in the `node`th text node. */
export type SentPlace = { in: number; pieces: SentPiece[] };
export type SentPiece = { node: number; from: number; start: number; length: number };

/** A list to paint, and every place that prints its letters. */
export type ListOrder = PaintOrder & { places: SentPlace[] };

/** A list that was found on a page; `id` is its number among the lists of its frame. */
export type FoundText = {
  id: number;
  text: string;
  via: string;
  product?: ProductFacts;
  /** By the words of its page it is for rooms, dishes or cloth: shown, not judged. */
  elsewhere?: true;
  /** Kept with a tab's page: the frame it stands in (0 the page itself), and how many of its names are proteins. */
  frame?: number;
  proteins?: number;
};

/** What a page may say of the one product it shows, as it stands there; `factsOf` makes sense of it. */
export type ProductClues = {
  /** Address that the page's own addresses are relative to. */
  base: string;
  heading: string;
  title: string;
  /** By name of the meta tag or microdata property; `canonical` is the link of that name, `language` the page's. */
  said: { [name: string]: string };
  /** JSON-LD blocks, and the state that a page's own scripts draw it from. */
  data: string[];
  /** Microdata that is printed nowhere: property and content, in order. */
  properties: [string, string][];
  /** Options and boxes chosen in forms. */
  chosen: string[];
  /** Text around the heading. */
  near: string;
  crumbs: string;
};

/** A name of the dictionary with what is known of it. */
export type KnownName = NameHit & { known: Known };

/** What the background keeps (storage.session) of the page a tab shows. */
export type TabPage = { url: string; title: string; shelf?: true; lists: FoundText[] };

/** Key of a tab's page in storage.session; gone when the tab shows another page. */
export const tabPageKey = (tab: number) => `page:${tab}`;

/** Which list of a tab's page: its number among the lists of its frame. */
export type ListRef = { frame: number; id: number };

/** A picture of a page, by the address it is shown from; without one, the largest in view. */
export type PictureRef = { frame: number; src?: string };

/** What the panel was opened for (storage.session, key `panelGoKey`); `nth` grows with each press. */
export type PanelGo = {
  tab: number;
  place: string;
  list?: ListRef;
  picture?: PictureRef;
  /** To choose whom the answers are for. */
  whom?: true;
  /** What stood there at the press, to be added or compared: by the time the panel hears, the tab may show another page. */
  met?: { text: string; facts: ProductFacts };
  nth: number;
};
export const panelGoKey = 'panel-go';

/** What the page shows of an act: nothing, or its words with the buttons that take it back and close it. */
export type Told = { drawn: Drawing[]; lang: string; dir: 'ltr' | 'rtl' };

/**
 * What came of an act: what to say of it and the key of its undo; or why nothing was changed, as a word key.
 * `nearlyFull`: the browser's room for the store is almost used up.
 */
export type Acted =
  | { ok: true; say?: Said; undo?: string; nearlyFull?: true }
  | { ok: false; reason: string };

/** One map from message name to request and reply. Requests are idempotent: a killed worker is asked again. */
export type Messages = {
  /** Content script → background: letters of this page that may hold lists (all of them, each time). */
  'page-lists': {
    /** `canPaint`: the painter has come before and need not be brought again. */
    request: { url: string; title: string; texts: PageText[]; clues: ProductClues; canPaint: boolean };
    reply: ListOrder[];
  };
  /** Content script → background, on sites that were taught something: what that is. */
  'site-here': { request: null; reply: { paused: boolean; listsAt: string[] } };
  /** Content script → background: the page moved on. */
  'page-left': { request: null; reply: null };
  /** Content script → background: rules for this document's highlights, whose names begin so, within these elements. */
  'line-rules': { request: { seed: string; selectors: string[] }; reply: null };
  /** Content script → background: this page may be a shelf: brings its file; whether the user was told what a press does. */
  'bring-shelf': { request: null; reply: { told: boolean } | null };
  /** Shelf → background: how these products stand and the bar with them; answers what to draw. */
  shelf: { request: { cards: CardState[]; bar: BarState }; reply: ShelfDrawn };
  /** Shelf → background: a page that came after a press. */
  'shelf-page': { request: ShelfPage; reply: { why?: UnreadReason } };
  /** Shelf → background: what the user chose on a product's card, or on the bar (no address). */
  'shelf-act': { request: { address: string; act: string; id: string }; reply: ShelfActed };
  /** Views → background: the shelf a tab shows, as rows; null where it shows none. */
  'shelf-rows': { request: { tab: number }; reply: ShelfRow[] | null };
  /** Views → background: reads on the shelf a tab shows. */
  'press-shelf': { request: { tab: number }; reply: null };
  /** Views → background: how many labels were met while browsing and are remembered. */
  'labels-met': { request: null; reply: number };
  /** Views → background: forgets them. */
  'forget-labels': { request: null; reply: null };
  /** Strip → background: what the user chose for one list of this page. */
  'strip-act': { request: { list: number; action: StripAction; id: string }; reply: Told };
  /** Strip → background: takes back what this page's strip did; only it knows the key. */
  'strip-undo': { request: { key: string }; reply: Told };
  /** Views → background: an act; its id makes a repeated one harmless. `tab` is the one in view. */
  act: { request: { act: Act; id: string; tab?: number }; reply: Acted };
  /** Views → background: takes back the act whose undo has this key. */
  undo: { request: { key: string }; reply: Acted };
  /** Views → background: texts to read. */
  read: { request: ({ text: string } & ReadOptions)[]; reply: Reading[] };
  /** Views → background: close spellings of unknown names. */
  close: { request: string[]; reply: string[][] };
  /** Views → background: names and aliases like what is typed, each with what is known of it. */
  'look-up': { request: string; reply: KnownName[] };
  /** Views → background: what is remembered, less the parts the asker has already. */
  'remembered-parts': { request: Stamps; reply: RememberedParts };
  /** Panel → background: forget everything, for good. */
  forget: { request: null; reply: null };
  /** Panel → background: read this tab now. */
  'read-tab': { request: { tab: number }; reply: null };
  /** Panel → background: let the user pick the element that holds the list. */
  'pick-list': { request: { tab: number }; reply: null };
  /** Panel → background: what closed parts of this tab that may hold a list are called. */
  'closed-parts': { request: { tab: number }; reply: string[] };
  /** Content script → background: the element that holds the list, as a selector, remembered for the site. */
  'list-is-here': { request: { selector: string }; reply: null };
  /** Background → content script. */
  again: { request: { taught?: boolean }; reply: null };
  stop: { request: null; reply: null };
  jump: { request: null; reply: null };
  /** Background → content script: reads on the shelf of this page; `told` where the user was just told what that does. */
  'read-shelf': { request: { told: boolean }; reply: null };
  /** Background → content script: the products of the shelf in view; null where there is none. */
  'shelf-cards': { request: null; reply: CardState[] | null };
  'read-selection': { request: { text: string }; reply: null };
};

export type MessageName = keyof Messages;

type Hear = (
  message: unknown,
  sender: chrome.runtime.MessageSender,
  reply: (value: unknown) => void,
) => boolean;

/** The part of the browser's runtime that messages need; tests hand in their own. */
export type Runtime = {
  id?: string;
  sendMessage(message: unknown): Promise<unknown>;
  onMessage: {
    addListener(hear: Hear): void;
    removeListener(hear: Hear): void;
  };
};

type Envelope = { ok: true; value: unknown } | { ok: false; reason: string };
type Request<N extends MessageName> = Messages[N]['request'];
type Reply<N extends MessageName> = Messages[N]['reply'];

/**
 * Asks the background. A worker killed before it answered is asked again, a few times: every request is
 * idempotent. Throws with the background's own reason, or with the browser's when nobody is there.
 */
export async function ask<N extends MessageName>(
  runtime: Pick<Runtime, 'sendMessage'>,
  name: N,
  request: Request<N>,
) {
  const send = async () => {
    const answered = (await runtime.sendMessage({ strandline: name, request })) as Envelope | undefined;
    if (!answered) throw new Error('no answer');
    return answered;
  };
  // A worker killed as it starts has no end either; of a tab that means that nobody is there.
  const final = 'id' in runtime ? /invalidated/ : /not exist|invalidated/;
  const answered = await triedAgain(send, (problem) => final.test(String(problem)));
  if (!answered.ok) throw new Error(answered.reason);
  return answered.value as Reply<N>;
}

/** Asks the background, wherever it is. */
export type Ask = <N extends MessageName>(name: N, request: Request<N>) => Promise<Reply<N>>;

export type Answers = {
  [N in MessageName]?: (
    request: Request<N>,
    sender: chrome.runtime.MessageSender,
  ) => Reply<N> | Promise<Reply<N>>;
};

/** Says what a message asks, parsed, or throws where its sender may not ask it. */
export type Admit = (name: MessageName, request: unknown, sender: chrome.runtime.MessageSender) => unknown;

/**
 * Answers messages by name; what is not ours, or not from this extension, is left to others.
 * @returns the undo
 */
export function answer(
  runtime: Runtime,
  answers: Answers,
  admit: Admit = (_, request) => request,
): () => void {
  const hear: Hear = (message, sender, reply) => {
    if (sender.id !== runtime.id || typeof message !== 'object' || message === null) return false;
    const { strandline, request } = message as { strandline?: unknown; request?: unknown };
    if (typeof strandline !== 'string' || !Object.hasOwn(answers, strandline)) return false;
    const of = answers[strandline as MessageName] as (request: unknown, sender: unknown) => unknown;
    // Called at once: a press in the page lets the background open the panel only within this call.
    new Promise((settle) => settle(of(admit(strandline as MessageName, request, sender), sender))).then(
      (value) => reply({ ok: true, value } satisfies Envelope),
      (problem: unknown) => reply({ ok: false, reason: String(problem) } satisfies Envelope),
    );
    return true;
  };
  runtime.onMessage.addListener(hear);
  return () => runtime.onMessage.removeListener(hear);
}
