import type { PanelGo } from '../../contract/messages.ts';

const justNow = 5000; // ms before the panel opened: it opens on a press, which comes first

/** Says what the panel was sent for from this tab: each press once, and none older than the one that opened it. */
export function createSentOnce(openedAt = Date.now()) {
  let last = openedAt - justNow;
  return (sent: PanelGo | undefined, tab: number | undefined): PanelGo | undefined => {
    if (!sent || sent.tab !== tab || sent.nth <= last) return undefined;
    last = sent.nth;
    return sent;
  };
}
