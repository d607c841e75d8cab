import { browser } from 'wxt/browser';

/**
 * The part of WXT's content script context that the reader uses, put in its place by `wxt.config.ts`: a sixth
 * of the reader's weight in every page was timers and address watching that nobody calls.
 */
export class ContentScriptContext {
  readonly #ending = new AbortController();
  readonly signal = this.#ending.signal;

  /** Ends the script of the same name that stands in this page already, and hears when a newer one comes. */
  constructor(name: string) {
    const started = `${browser.runtime.id}:${name}:started`;
    document.dispatchEvent(new Event(started));
    document.addEventListener(started, () => this.abort(), { signal: this.signal });
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

  onInvalidated(undo: () => void): void {
    this.signal.addEventListener('abort', undo);
  }
}

/** What the reader may call of it: a call of anything else of WXT's context is an error of types. */
export type ReaderContext = Pick<ContentScriptContext, keyof ContentScriptContext>;
