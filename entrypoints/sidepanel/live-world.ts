import { ask } from '../../src/contract/messages.ts';
import type { Said } from '../../src/ui/parts/toast.tsx';
import type { PlaceName, World } from '../../src/ui/world.ts';
import { readingCache } from '../../src/use/reading/reading-cache.ts';
import type { Ask } from './asked.ts';
import { createDoing } from './doing.ts';
import { followStore } from './follow-store.ts';
import { followTab, heldTab } from './follow-tab.ts';
import { createGoing, firstPlace } from './going.ts';
import { onceATurn } from './once-a-turn.ts';
import { stateAt } from './state.ts';
import { worldOf } from './world.ts';

export type PanelState = { world: World; place: PlaceName; said: Said | undefined };

/** The real world of the panel: follows the tab in view and the store, and draws at most once a turn. */
export function livePanel(
  browser: typeof chrome,
  draw: (drawn: PanelState) => void,
  opening: (place: PlaceName) => void = () => {},
) {
  const held = heldTab(new URLSearchParams(location.search));
  const state = stateAt(firstPlace());
  opening(state.place);
  const drawSoon = onceATurn(() => {
    if (!state.loaded) return;
    const world = worldOf({ browser, state, held, asked, doing, reading, go });
    draw({ world, place: state.place, said: state.said });
  });
  const asked: Ask = (name, request) => ask(browser.runtime as never, name, request);
  const failed = () => doing.say(state.t('shell.no-background'));
  const reading = readingCache((texts) => asked('read', texts), drawSoon, failed);
  const { recall } = followStore(browser, state, {
    remembered: (has) => asked('remembered-parts', has),
    failed,
    drawSoon,
  });
  const doing = createDoing(state, asked, { drawSoon, recall });
  const { go, sent } = createGoing(state, doing, drawSoon);
  followTab(browser, state, held, { toTab: (name, tab) => asked(name, { tab }), sent, drawSoon });
  void recall();

  return {
    dismiss() {
      state.said = undefined;
      drawSoon();
    },
  };
}
