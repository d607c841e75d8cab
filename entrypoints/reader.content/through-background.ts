import { browser } from 'wxt/browser';
import { type Ask, ask } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';
import { native } from '../../src/page/read/dom.ts';
import type { ReaderWorld } from '../../src/page/read/reader.ts';
import type { ReaderContext } from './context.ts';
import { newId, siteHere } from './here.ts';

/** Asks the background; where an update left this script without one, all of ours goes. */
export const askAsLongAs =
  (ctx: ReaderContext): Ask =>
  (name, request) =>
    ask(browser.runtime, name, request).catch((problem: unknown) => {
      if (ctx.isInvalid) ctx.abort();
      throw problem;
    });

/** What the reader has from the background. */
export const throughBackground = (
  ctx: ReaderContext,
  asked: Ask,
): Omit<ReaderWorld, 'window' | 'signal' | 'stirred'> => ({
  read: (texts, clues) =>
    asked('page-lists', {
      url: location.href,
      title: native(document, 'title'),
      texts,
      clues,
      canPaint: ours.painter !== undefined,
    }),
  left: () => asked('page-left', null),
  // A page sees these marks: test builds only.
  ...(import.meta.env.MODE === 'localhost' && {
    mark: (what: string) => performance.mark(`strandline ${what}`),
  }),
  listsAt: async () => (await siteHere()).listsAt,
  painter: () =>
    ours.painter?.({
      act: (list, action) => asked('strip-act', { list, action, id: newId() }),
      undo: (key) => asked('strip-undo', { key }),
      // Nobody waits for it: an update may come before its answer.
      rule: (selectors) => void asked('line-rules', { seed: ours.seed, selectors }).catch(() => undefined),
    }),
  isHere: () => ctx.isValid,
});
