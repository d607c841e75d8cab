import { practice } from '../../dictionary/practice.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import { ask, type MessageName, type Messages, type PanelGo } from '../../src/contract/messages.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';
import { removedOf } from '../../src/store/undo-stack.ts';
import type { Said } from '../../src/ui/parts/toast.tsx';
import { isPlace } from '../../src/ui/shell.tsx';
import type { Detail, PlaceName, World } from '../../src/ui/world.ts';
import { comparedMet } from '../../src/use/acts/pins.ts';
import { metOnPage } from '../../src/use/judge/met-product.ts';
import { marketBy, practiceOf } from '../../src/use/practice-of.ts';
import { dayOf } from '../../src/use/today.ts';
import { createDoing } from './doing.ts';
import { openStore, save } from './files.ts';
import { followStore } from './follow-store.ts';
import { followTab, heldTab } from './follow-tab.ts';
import { picturesOf } from './pictures.ts';
import { readingCache } from './reading-cache.ts';
import { shelfOf } from './shelf.ts';
import { stateAt } from './state.ts';

export type PanelState = { world: World; place: PlaceName; said: Said | undefined };

/** Where the panel was left, at once and without asking anybody. */
const leftAt = 'place';

/** The real world of the panel: follows the tab in view and the store, and draws at most once a turn. */
export function openPanel(
  browser: typeof chrome,
  draw: (drawn: PanelState) => void,
  opening: (place: PlaceName) => void = () => {},
) {
  const held = heldTab(new URLSearchParams(location.search));
  const wanted = location.hash.slice(1) || (localStorage.getItem(leftAt) ?? undefined);
  const state = stateAt(isPlace(wanted) ? wanted : 'page');
  opening(state.place);

  let due = false;
  function drawSoon() {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (state.loaded) draw({ world: world(), place: state.place, said: state.said });
    });
  }

  const asked = <N extends MessageName>(name: N, request: Messages[N]['request']) =>
    ask(browser.runtime as never, name, request);
  const failed = () => doing.say(state.t('shell.no-background'));
  const reading = readingCache((texts) => asked('read', texts), drawSoon, failed);
  const { recall } = followStore(browser, state, {
    remembered: () => asked('remembered', null),
    failed,
    drawSoon,
  });
  const doing = createDoing(state, asked, { drawSoon, recall });

  function go(to: PlaceName, what?: Detail) {
    state.place = to;
    state.detail = what;
    localStorage.setItem(leftAt, to);
    drawSoon();
  }

  async function sent({ place, list: ref, picture }: PanelGo) {
    if (!isPlace(place)) return;
    if (picture) return go(place, { picture });
    const list = state.page?.lists.find(({ id, frame = 0 }) => ref?.id === id && ref.frame === frame);
    const met = list && metOnPage(list, state.page);
    if (place === 'routine' && met) return go(place, { add: met });
    if (place === 'compare' && met) await doing.act({ act: 'pin', pin: comparedMet(met).pin });
    go(place, ref && { list: ref });
  }

  followTab(browser, state, held, {
    toTab: (name, tab) => asked(name, { tab }),
    sent,
    drawSoon,
  });
  void recall();

  const world = (): World => ({
    t: state.t,
    practice: practiceOf(practice, state.remembered),
    sources,
    today: dayOf(new Date()),
    now: () => new Date().toISOString(),
    remembered: state.remembered,
    page: state.page,
    reading: (text, as) => {
      const { readAs } = state.remembered;
      return reading(text, {
        ...readAsOf(as, marketBy(practice, state.remembered)),
        ...(Object.keys(readAs).length > 0 && { readAs }),
      });
    },
    close: (names) => asked('close', names).catch(() => names.map(() => [])),
    lookUp: (typed) => asked('look-up', typed).catch(() => []),
    act: doing.act,
    change: (...changes) => doing.act({ act: 'change', changes }),
    undo: doing.undo,
    say: doing.say,
    go,
    ...(state.detail && { detail: state.detail }),
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
    ...(held === undefined && {
      openWide: () => {
        const url = browser.runtime.getURL(`/sidepanel.html?tab=${state.tab?.id ?? ''}#${state.place}`);
        void browser.tabs.create({ url });
      },
    }),
  });

  return {
    dismiss() {
      state.said = undefined;
      drawSoon();
    },
  };
}
