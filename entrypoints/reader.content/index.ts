import { browser } from 'wxt/browser';
import { defineContentScript } from 'wxt/utils/define-content-script';
import { type Ask, answer, ask } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';
import { native } from '../../src/page/read/dom.ts';
import { startReader } from '../../src/page/read/reader.ts';
import type { Shelf } from '../../src/page/shelf/shelf.ts';
import type { ReaderContext } from './context.ts';
import { sameOriginAsTop, siteHere } from './here.ts';
import { readerWorld } from './reader-world.ts';

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
    const asked: Ask = (name, request) =>
      ask(browser.runtime, name, request).catch((problem: unknown) => {
        // An update leaves this script without a background: then all of ours goes.
        if (ctx.isInvalid) ctx.abort();
        throw problem;
      });
    let shelf: Shelf | undefined;
    const bringShelf = async () => {
      const brought = await asked('bring-shelf', null);
      shelf = brought ? ours.shelf?.(ctx.signal, brought.told) : undefined;
    };
    const reader = startReader(readerWorld(ctx, asked, bringShelf));
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
