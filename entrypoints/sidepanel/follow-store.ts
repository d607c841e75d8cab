import type { RememberedParts, Stamps } from '../../src/store/parts.ts';
import { isUndoKey, undosIn } from '../../src/store/undo-stack.ts';
import type { State } from '../../src/ui/panel/state.ts';
import { wordsIn } from '../../src/ui/words/languages.ts';
import { asOfNow } from '../../src/use/as-of-now.ts';

/** Keeps the panel's view of what is remembered, in the user's language, and of what can be undone. */
export function followStore(
  browser: typeof chrome,
  state: State,
  on: {
    /** What is remembered, less the parts of these stamps. */
    remembered(has: Stamps): Promise<RememberedParts>;
    /** What was asked for before anybody listened: the first answer, and asked anew after it. */
    early?: Promise<RememberedParts> | undefined;
    failed(): void;
    drawSoon(): void;
  },
) {
  let has: Stamps = {};
  let { early } = on;
  const recall = asOfNow(async () => {
    const answer = early ?? on.remembered(has);
    early = undefined;
    try {
      const { stamps, parts } = await answer;
      has = stamps;
      state.remembered = { ...state.remembered, ...parts };
      state.undos = undosIn(await browser.storage.session.get(null));
    } catch {
      on.failed();
    }
    state.t = await wordsIn(browser, state.remembered.settings);
    state.loaded = true;
    on.drawSoon();
  });

  browser.storage.local.onChanged.addListener(() => void recall());
  browser.storage.session.onChanged.addListener((changes) => {
    if (Object.keys(changes).some(isUndoKey)) void recall();
  });
  return {
    recall,
    begin() {
      const wasEarly = early !== undefined;
      void recall();
      if (wasEarly) void recall(); // what changed before we listened
    },
  };
}
