import { practice } from '../../dictionary/practice.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import { removedOf } from '../../src/store/undo-stack.ts';
import type { World } from '../../src/ui/world.ts';
import { practiceOf, readOptionsOf } from '../../src/use/practice-of.ts';
import type { readingCache } from '../../src/use/reading/reading-cache.ts';
import { isoDay } from '../../src/use/today.ts';
import type { Ask } from './asked.ts';
import type { Doing } from './doing.ts';
import { openStore, save } from './files.ts';
import { picturesOf } from './pictures.ts';
import { shelfOf } from './shelf.ts';
import type { State } from './state.ts';

type Parts = {
  browser: typeof chrome;
  state: State;
  /** Tab that the panel stays with; none where it follows the tab in view. */
  held: number | undefined;
  asked: Ask;
  doing: Doing;
  reading: ReturnType<typeof readingCache>;
  go: World['go'];
};

/** What the panel's places know and may do, as it is now. */
export function worldOf({ browser, state, asked, doing, reading, go, ...parts }: Parts): World {
  return {
    t: state.t,
    practice: practiceOf(practice, state.remembered),
    sources,
    today: isoDay(new Date()),
    now: () => new Date().toISOString(),
    remembered: state.remembered,
    page: state.page,
    reading: (text, as) => reading(text, readOptionsOf(practice, state.remembered, as)),
    close: (names) => asked('close', names).catch(() => names.map(() => [])),
    lookUp: (typed) => asked('look-up', typed).catch(() => []),
    act: doing.act,
    change: (...changes) => doing.act({ act: 'change', changes }),
    undo: doing.undo,
    say: doing.say,
    go,
    ...(state.detail && { detail: state.detail }),
    ...(state.from && { from: state.from }),
    save,
    newId: () => crypto.randomUUID(),
    forget: doing.forget,
    removed: removedOf(state.undos, state.remembered),
    store: openStore,
    ...(state.reach && { reach: state.reach }),
    pictures: picturesOf(browser, () => state.tab?.id),
    ...(state.tab && {
      shelf: shelfOf(state.tab.id, asked, save),
    }),
    labelsMet: { count: () => asked('labels-met', null), forget: () => asked('forget-labels', null) },
    ...(parts.held === undefined && {
      openWide: () => {
        const url = browser.runtime.getURL(`/sidepanel.html?tab=${state.tab?.id ?? ''}#${state.place}`);
        void browser.tabs.create({ url });
      },
    }),
  };
}
