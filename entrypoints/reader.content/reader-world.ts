import type { Ask } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';
import { native } from '../../src/page/read/dom.ts';
import type { ReaderWorld } from '../../src/page/read/reader.ts';
import { seekShelf } from '../../src/page/read/shelf-gate.ts';
import type { ReaderContext } from './context.ts';
import { newId, siteHere } from './here.ts';

/** What the reader has from outside: this document, and the background's answers. */
export const readerWorld = (
  ctx: ReaderContext,
  asked: Ask,
  bringShelf: () => Promise<void>,
): ReaderWorld => ({
  window,
  signal: ctx.signal,
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
  ...(window === window.top && {
    stirred: seekShelf(ctx.signal, () => void bringShelf().catch(() => undefined)),
  }),
});
