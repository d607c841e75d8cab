import { keepingEqual, type RememberedParts, type Stamps } from '../../src/store/parts.ts';
import type { Remembered } from '../../src/store/remembered.ts';
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
  let isAhead = false; // what is shown was left ahead
  const recall = asOfNow(async () => {
    const answer = early ?? on.remembered(has);
    early = undefined;
    try {
      const { stamps, parts } = await answer;
      has = stamps;
      const now = { ...state.remembered, ...parts };
      state.remembered = isAhead ? keepingEqual(now, state.remembered) : now;
      isAhead = false;
      state.undos = undosIn(await browser.storage.session.get(null));
    } catch {
      on.failed();
    }
    await show();
  });

  async function show() {
    state.t = await wordsIn(browser, state.remembered.settings);
    state.loaded = true;
    on.drawSoon();
  }

  /** Draws by what was left ahead, once the tab is known, where the background has not answered by then. */
  async function showAhead(left: Promise<Remembered | undefined>, looked: Promise<unknown>) {
    const [remembered] = await Promise.all([left, looked]);
    if (!remembered || state.loaded || Object.keys(has).length > 0) return;
    state.remembered = remembered;
    isAhead = true;
    await show();
  }

  browser.storage.local.onChanged.addListener(() => void recall());
  browser.storage.session.onChanged.addListener((changes) => {
    if (Object.keys(changes).some(isUndoKey)) void recall();
  });
  return {
    recall,
    showAhead,
    begin() {
      const wasEarly = early !== undefined;
      void recall();
      if (wasEarly) void recall(); // what changed before we listened
    },
  };
}
