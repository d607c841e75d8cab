import { defineContentScript } from 'wxt/utils/define-content-script';
import { ours } from '../../src/page/ours.ts';
import { native } from '../../src/page/read/dom.ts';
import { startReader } from '../../src/page/read/reader.ts';
import { seekShelf } from '../../src/page/read/shelf-gate.ts';
import type { Shelf } from '../../src/page/shelf/shelf.ts';
import type { ReaderContext } from './context.ts';
import { hearBackground } from './hear-background.ts';
import { sameOriginAsTop, siteHere } from './here.ts';
import { askAsLongAs, throughBackground } from './through-background.ts';

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
    const asked = askAsLongAs(ctx);
    let shelf: Shelf | undefined;
    const bringShelf = async () => {
      const brought = await asked('bring-shelf', null);
      shelf = brought ? ours.shelf?.(ctx.signal, brought.told) : undefined;
    };
    const reader = startReader({
      window,
      signal: ctx.signal,
      ...throughBackground(ctx, asked),
      ...(window === window.top && {
        stirred: seekShelf(ctx.signal, () => void bringShelf().catch(() => undefined)),
      }),
    });
    hearBackground(ctx, reader, () => shelf);
  },
});
