import type { Reach } from '../../src/ui/world.ts';

const everywhere = 'https://*/*';
const patternOf = (origin: string) => `${origin}/*`;

/** What the browser lets us read, as it stands now. */
export async function reachOf(
  permissions: typeof chrome.permissions,
  url: string | undefined,
  toTab: (name: 'read-tab' | 'pick-list' | 'closed-parts') => Promise<unknown>,
): Promise<Reach> {
  const held = (await permissions.getAll()).origins ?? [];
  const origin = url && /^https?:/.test(url) ? new URL(url).origin : undefined;
  const all = held.some((each) => each === everywhere || each === '<all_urls>' || each === '*://*/*');
  const one = held.filter((each) => /^https?:\/\/[^*]+\/\*$/.test(each)).map((each) => each.slice(0, -2));
  const done = (asked: Promise<unknown>) =>
    asked.then(
      () => true,
      () => false,
    );
  return {
    ...(origin && { origin }),
    here: all || (origin !== undefined && (await permissions.contains({ origins: [patternOf(origin)] }))),
    everywhere: all,
    origins: one,
    // Straight from the click: nothing may be awaited before the browser is asked.
    allow: (what) =>
      permissions.request({
        origins: [what === 'everywhere' ? everywhere : patternOf(origin ?? 'https://*')],
      }),
    withdraw: (what) =>
      permissions.remove({ origins: [what === 'everywhere' ? everywhere : patternOf(what)] }),
    readNow: () => done(toTab('read-tab')),
    pickList: () => done(toTab('pick-list')),
    closedParts: () =>
      toTab('closed-parts')
        .then((names) => names as string[])
        .catch(() => []),
  };
}
