import { browser } from 'wxt/browser';
import { ask } from '../../src/contract/messages.ts';
import { ours } from '../../src/page/ours.ts';

/** What was taught of this site; the background is asked, and woken, only where something was. */
export const siteHere = async () =>
  ours.taught ? ask(browser.runtime, 'site-here', null) : { paused: false, listsAt: [] };

// `randomUUID` is not there on pages without https.
export const newId = () => crypto.getRandomValues(new Uint32Array(4)).join('-');

/** Frames of other origins (advertisements, players) are left alone. */
export function sameOriginAsTop(): boolean {
  try {
    return window.top?.document !== undefined;
  } catch {
    return false;
  }
}
