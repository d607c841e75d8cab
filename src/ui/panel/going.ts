import type { PanelGo } from '../../contract/messages.ts';
import { comparedMet } from '../../use/acts/matters/pins.ts';
import { isPlace } from '../shell.tsx';
import type { Detail, PlaceName } from '../world.ts';
import type { Doing } from './doing.ts';
import type { State } from './state.ts';

/** Where the panel was left, at once and without asking anybody. */
const leftAt = 'place';

/** The place the panel opens at: the one its address asks for, or the one it was left at. */
export function firstPlace(): PlaceName {
  const wanted = location.hash.slice(1) || (localStorage.getItem(leftAt) ?? undefined);
  return isPlace(wanted) ? wanted : 'page';
}

/** Going from place to place, by the user's hand or sent from a page. */
export function createGoing(state: State, doing: Doing, drawSoon: () => void) {
  function go(to: PlaceName, what?: Detail) {
    if (to !== state.place) {
      state.from = what && 'product' in what ? state.place : undefined;
      // What was said belongs to the place it was said at, or to the one that the same press leads to.
      if (!state.said?.fresh) state.said = undefined;
    }
    state.place = to;
    state.detail = what;
    localStorage.setItem(leftAt, to);
    drawSoon();
  }

  async function sent({ place, list: ref, picture, whom, met }: PanelGo) {
    if (!isPlace(place)) return;
    if (picture) return go(place, { picture });
    if (place === 'routine' && met) return go(place, { add: met });
    if (place === 'compare' && met) await doing.act({ act: 'pin', pin: comparedMet(met).pin });
    go(place, ref && { list: ref, ...(whom && { whom }) });
  }
  return { go, sent };
}
