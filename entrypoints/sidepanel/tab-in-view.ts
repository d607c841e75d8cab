/** `?tab=ID` holds the panel to one tab: the panel as a whole page. */
export function heldTab(query: URLSearchParams): number | undefined {
  return query.has('tab') ? Number(query.get('tab')) || 0 : undefined;
}

/** The tab that the panel is held to, else the one its window shows. */
export async function tabInView({ tabs }: Pick<typeof chrome, 'tabs'>, held: number | undefined) {
  if (held === undefined) return (await tabs.query({ active: true, currentWindow: true }))[0];
  return held > 0 ? tabs.get(held).catch(() => undefined) : undefined;
}

/** Calls when another tab comes into view, the one in view moves on, or the browser lets us read more or less. */
export function hearTabInView(
  { tabs, windows, permissions }: typeof chrome,
  isInView: (tab: number) => boolean,
  again: () => void,
) {
  tabs.onActivated.addListener(again);
  tabs.onUpdated.addListener((tab, what) => {
    if (isInView(tab) && (what.status || what.url)) again();
  });
  windows.onFocusChanged?.addListener(again);
  permissions.onAdded.addListener(again);
  permissions.onRemoved.addListener(again);
}
