import { browser } from 'wxt/browser';
import { defineContentScript } from 'wxt/utils/define-content-script';
import { answer, ask } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';
import { native } from '../../src/page/read/dom.ts';
import { startReader } from '../../src/page/read/reader.ts';
import { seekShelf } from '../../src/page/read/shelf-gate.ts';
import type { Shelf } from '../../src/page/shelf/shelf.ts';
import type { ReaderContext } from './context.ts';
import { newId, sameOriginAsTop, siteHere } from './here.ts';

export default defineContentScript({
  registration: 'runtime',
  cssInjectionMode: 'manual',
  noScriptStartedPostMessage: true,
  async main(ctx: ReaderContext) {
    if (!sameOriginAsTop()) return;
    if (native(document as Document & { prerendering?: boolean }, 'prerendering'))
      await new Promise((begin) =>
        window.addEventListener('prerenderingchange', begin, { once: true, capture: true }),
      );
    if ((await siteHere()).paused) return;
    const gone = (problem: unknown) => {
      if (ctx.isInvalid) ctx.abort();
      throw problem;
    };
    let shelf: Shelf | undefined;
    const bringShelf = async () => {
      const brought = await ask(browser.runtime, 'bring-shelf', null).catch(gone);
      shelf = brought ? ours.shelf?.(ctx.signal, brought.told) : undefined;
    };
    const reader = startReader({
      window,
      signal: ctx.signal,
      read: (texts, clues) =>
        ask(browser.runtime, 'page-lists', {
          url: location.href,
          title: native(document, 'title'),
          texts,
          clues,
          canPaint: ours.painter !== undefined,
        }).catch(gone),
      left: () => ask(browser.runtime, 'page-left', null).catch(gone),
      // A page sees these marks: test builds only.
      ...(import.meta.env.MODE === 'localhost' && {
        mark: (what: string) => performance.mark(`strandline ${what}`),
      }),
      listsAt: async () => (await siteHere()).listsAt,
      painter: () =>
        ours.painter?.({
          act: (list, action) => ask(browser.runtime, 'strip-act', { list, action, id: newId() }).catch(gone),
          undo: (key) => ask(browser.runtime, 'strip-undo', { key }).catch(gone),
          // Nobody waits for it: an update may come before its answer.
          rule: (selectors) =>
            void ask(browser.runtime, 'line-rules', { seed: ours.seed, selectors }).catch(
              () => ctx.isInvalid,
            ),
        }),
      isHere: () => ctx.isValid,
      ...(window === window.top && {
        stirred: seekShelf(ctx.signal, () => void bringShelf().catch(() => undefined)),
      }),
    });
    const heard = (does: () => void) => () => {
      if (ctx.isValid) does();
      return null;
    };
    const deaf = answer(browser.runtime, {
      again: ({ taught }) => {
        if (taught !== undefined) ours.taught = taught;
        shelf?.again();
        return heard(reader.again)();
      },
      'read-shelf': ({ told }) => heard(() => shelf?.read(told))(),
      'shelf-cards': () => shelf?.table() ?? null,
      jump: heard(reader.jump),
      stop: heard(() => ctx.abort()),
      'read-selection': ({ text }) => {
        reader.readSelection(text);
        return null;
      },
    });
    ctx.signal.addEventListener('abort', deaf);
  },
});
