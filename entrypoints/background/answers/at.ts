import type { StripAt } from '../../../src/use/acts/strip-act.ts';
import { siteOfSender } from './admit.ts';

/** Where a script of ours stands; every one stands in a tab. Throws where it does not. */
export function at(sender: chrome.runtime.MessageSender): StripAt {
  const { tab, frameId: frame = 0 } = sender;
  if (tab?.id === undefined) throw new Error('not in a tab');
  return { tab: tab.id, frame, site: siteOfSender(sender) };
}
