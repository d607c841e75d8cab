import { practice } from '../../dictionary/practice.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { Ask } from '../../src/contract/messages.ts';
import { removedOf } from '../../src/store/undo-stack.ts';
import type { Doing } from '../../src/ui/panel/doing.ts';
import type { State } from '../../src/ui/panel/state.ts';
import type { World } from '../../src/ui/world.ts';
import { practiceOf, readOptionsOf } from '../../src/use/practice-of.ts';
import type { readingCache } from '../../src/use/reading/reading-cache.ts';
import { isoDay } from '../../src/use/today.ts';
import { throughBrowser } from './through-browser.ts';

type WorldParts = {
  browser: typeof chrome;
  state: State;
  /** Tab that the panel stays with; none where it follows the tab in view. */
  held: number | undefined;
  asked: Ask;
  doing: Doing;
  readings: ReturnType<typeof readingCache>;
  go: World['go'];
};

/** What the panel's places know and may do, as it is now. */
export function worldOf({ browser, state, held, asked, doing, readings, go }: WorldParts): World {
  const { t, remembered, page, detail, from, reach, undos } = state;
  return {
    t,
    practice: practiceOf(practice, remembered),
    sources,
    today: isoDay(new Date()),
    now: () => new Date().toISOString(),
    remembered,
    page,
    reading: (text, as) => readings.reading(text, readOptionsOf(practice, state.remembered, as)),
    ...(readings.failing() && { unread: { again: readings.again } }),
    ...doing,
    go,
    ...(detail && { detail }),
    ...(from && { from }),
    newId: () => crypto.randomUUID(),
    removed: removedOf(undos, remembered),
    ...(reach && { reach }),
    ...throughBrowser(browser, state, held, asked),
  };
}
