import type { Use } from './core/entry.ts';
import type { Finding } from './core/finding.ts';
import type { ProductFacts } from './core/product.ts';
import type { ReadAs, Reading } from './core/reading.ts';
import type { Change, Outcome, Remembered } from './store/remembered.ts';
import type { PaintOrder } from './ui/paint-order.ts';

/** What the content script found on its page. `id` is its own and comes back with the answer. */
export type FoundText = { id: number; text: string; via: string; product?: ProductFacts };

/** What the background keeps (storage.session) of the page a tab shows. */
export type TabPage = { url: string; title: string; lists: FoundText[] };

/** One map from message name to request and reply. Requests are idempotent: a killed worker is asked again. */
export type Messages = {
  /** Content script → background: lists of this page (all of them, each time). */
  'page-lists': { request: { url: string; title: string; lists: FoundText[] }; reply: PaintOrder[] };
  /** Content script → background: the page moved on. */
  'page-left': { request: null; reply: null };
  /** Views → background: texts to read. */
  read: { request: { text: string; use?: Use; readAs?: ReadAs }[]; reply: Reading[] };
  /** Views → background: close spellings of unknown names. */
  close: { request: string[]; reply: string[][] };
  /** Views → background: what a tab shows. */
  'tab-page': { request: { tab: number }; reply: TabPage | null };
  /** Anyone → background: the one writer. All changes of one request succeed or none. */
  change: { request: Change[]; reply: Outcome };
  remembered: { request: null; reply: Remembered };
  /** Strip → background: open the panel, with what to do there. */
  'open-panel': { request: { place: string; list?: number }; reply: null };
};

export type MessageName = keyof Messages;

/** A finding as it travels. */
export type { Finding };
