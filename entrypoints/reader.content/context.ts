import { browser } from 'wxt/browser';
import '../../src/page/begin-ours.ts';
import { ours } from '../../src/page/ours.ts';

/**
 * The part of WXT's content script context that the reader uses, put in its place by `wxt.config.ts`: a sixth
 * of the reader's weight in every page was timers and address watching that nobody calls.
 */
export class ContentScriptContext {
  readonly #ending = new AbortController();
  readonly signal = this.#ending.signal;

  /** Ends the reader that stands in this document already; no event says so, a page would hear it or send it. */
  constructor() {
    ours.reader?.abort();
    ours.reader = this.#ending;
  }

  abort(): void {
    this.#ending.abort();
  }

  /** An update leaves the old script in the page without its extension. */
  get isInvalid(): boolean {
    if (!browser.runtime?.id) this.abort();
    return this.signal.aborted;
  }

  get isValid(): boolean {
    return !this.isInvalid;
  }
}

/** What the reader may call of it: a call of anything else of WXT's context is an error of types. */
export type ReaderContext = Pick<ContentScriptContext, keyof ContentScriptContext>;
