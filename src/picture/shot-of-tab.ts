/** What of the browser is asked for a shot; tests hand in their own. */
export type Tabs = {
  get(
    tab: number,
  ): Promise<{ active: boolean; windowId: number; url?: string | undefined; status?: string | undefined }>;
  captureVisibleTab(window: number, as: { format: 'png' }): Promise<string>;
};

/**
 * What a tab shows, as the data URL of a PNG; undefined where it is not in view, or the user went on to another tab or
 * page while it was taken. Throws where the browser does not let us see it.
 */
export async function shotOfTab(tabs: Tabs, tab: number): Promise<string | undefined> {
  const before = await tabs.get(tab);
  if (!before.active) return undefined;
  const shot = await tabs.captureVisibleTab(before.windowId, { format: 'png' });
  const after = await tabs.get(tab);
  const leaves = after.status === 'loading' && before.status !== 'loading';
  return after.active && after.url === before.url && !leaves ? shot : undefined;
}
