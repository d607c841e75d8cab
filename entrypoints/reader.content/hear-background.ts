import { browser } from 'wxt/browser';
import { answer } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';
import type { startReader } from '../../src/page/read/reader.ts';
import type { Shelf } from '../../src/page/shelf/shelf.ts';
import type { ReaderContext } from './context.ts';

/** Does what the background asks of this page, as long as the reader stands here. */
export const hearBackground = (
  ctx: ReaderContext,
  reader: ReturnType<typeof startReader>,
  shelf: () => Shelf | undefined,
) => {
  const heard = (does: () => void) => () => {
    if (ctx.isValid) does();
    return null;
  };
  const deaf = answer(browser.runtime, {
    again: ({ taught }) => {
      if (taught !== undefined) ours.taught = taught;
      shelf()?.again();
      return heard(reader.again)();
    },
    'read-shelf': ({ told }) => heard(() => shelf()?.read(told))(),
    'shelf-cards': () => shelf()?.table() ?? null,
    jump: heard(reader.jump),
    stop: heard(() => ctx.abort()),
    'read-selection': ({ text }) => {
      reader.readSelection(text);
      return null;
    },
  });
  ctx.signal.addEventListener('abort', deaf);
};
