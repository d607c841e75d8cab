import { type Ask, ask } from '../../src/contract/messages.ts';
import type { Stamps } from '../../src/store/parts.ts';
import { nothingRemembered } from '../../src/store/remembered.ts';
import { createDoing } from '../../src/ui/panel/doing.ts';
import { createGoing, firstPlace } from '../../src/ui/panel/going.ts';
import { onceATurn } from '../../src/ui/panel/once-a-turn.ts';
import { type PanelState, stateAt } from '../../src/ui/panel/state.ts';
import type { PlaceName } from '../../src/ui/world.ts';
import { readingCache } from '../../src/use/reading/reading-cache.ts';
import { takeEarly } from './early-answer.ts';
import { followStore } from './follow-store.ts';
import { followTab } from './follow-tab.ts';
import { heldTab } from './tab-in-view.ts';
import { worldOf } from './world.ts';

/** The real world of the panel: follows the tab in view and the store, and draws at most once a turn. */
export function livePanel(
  browser: typeof chrome,
  draw: (drawn: PanelState) => void,
  opening: (place: PlaceName) => void = () => {},
) {
  const held = heldTab(new URLSearchParams(location.search));
  const state = stateAt(firstPlace(), nothingRemembered());
  opening(state.place);
  const drawSoon = onceATurn(() => {
    if (!state.loaded) return;
    const world = worldOf({ browser, state, held, asked, doing, readings, go });
    draw({ world, place: state.place, said: state.said });
  });
  const asked: Ask = (name, request) => ask(browser.runtime as never, name, request);
  const failed = () => doing.say(state.t('shell.no-background'));
  const readings = readingCache((texts) => asked('read', texts), drawSoon, failed);
  const remembered = (has: Stamps) => asked('remembered-parts', has);
  const store = followStore(browser, state, { remembered, early: takeEarly(), failed, drawSoon });
  const doing = createDoing(state, asked, { drawSoon, recall: store.recall });
  const { go, sent } = createGoing(state, doing, drawSoon);
  followTab(browser, state, held, { toTab: (name, tab) => asked(name, { tab }), sent, drawSoon });
  store.begin();
  return { dismiss: doing.dismiss };
}
