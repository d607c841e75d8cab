import type { Reach } from '../../src/ui/world.ts';
import { allowedBy } from '../../src/use/reach/allowed.ts';

const patternOf = (origin: string) => `${origin}/*`;
const patternFor = (what: string, origin?: string) =>
  what === 'everywhere' ? 'https://*/*' : patternOf(origin ?? 'https://*');

/** What the browser lets us read, as it stands now. */
export async function reachOf(
  permissions: typeof chrome.permissions,
  url: string | undefined,
  toTab: (name: 'read-tab' | 'pick-list' | 'closed-parts') => Promise<unknown>,
): Promise<Reach> {
  const { everywhere, origins } = allowedBy((await permissions.getAll()).origins ?? []);
  const origin = url && /^https?:/.test(url) ? new URL(url).origin : undefined;
  const granted = () => origin !== undefined && permissions.contains({ origins: [patternOf(origin)] });
  const done = (asked: Promise<unknown>) =>
    asked.then(
      () => true,
      () => false,
    );
  return {
    ...(origin && { origin }),
    here: everywhere || (await granted()),
    everywhere,
    origins,
    // Straight from the click: nothing may be awaited before the browser is asked.
    allow: (what) => permissions.request({ origins: [patternFor(what, origin)] }),
    withdraw: (what) => permissions.remove({ origins: [patternFor(what, what)] }),
    readNow: () => done(toTab('read-tab')),
    pickList: () => done(toTab('pick-list')),
    closedParts: () =>
      toTab('closed-parts').then(
        (names) => names as string[],
        () => [],
      ),
  };
}
