import type { WxtBrowser } from 'wxt/browser';
import { oneAtATime } from '../../store/area.ts';
import type { Site } from '../../store/remembered.ts';
import { originOf, siteOf } from '../acts/matters/sites.ts';
import { filesFor, scriptIds as ids, isTaught, scriptsFor, whereStanding } from './reader-scripts.ts';

type Browser = Pick<WxtBrowser, 'permissions' | 'scripting' | 'tabs'>;

/**
 * Where pages are read: one content script, registered for the origins the user granted, on sites that were
 * taught something with a word to ask for it first, and put into the open tabs that have none yet.
 */
export function createReach(browser: Browser, sites: () => Promise<readonly Site[]>) {
  const inTurn = oneAtATime(undefined, 'reach');

  /** Registers what is granted and known now. Answers the granted origins, and whether anything had to change. */
  async function register() {
    const [{ origins = [] }, known, registered] = await Promise.all([
      browser.permissions.getAll(),
      sites(),
      browser.scripting.getRegisteredContentScripts({ ids }),
    ]);
    const wanted = scriptsFor(origins, known);
    if (whereStanding(wanted) === whereStanding(registered)) return { origins, changed: false };
    const has = new Set(registered.map(({ id }) => id));
    const gone = [...has].filter((id) => !wanted.some((script) => script.id === id));
    if (gone.length > 0) await browser.scripting.unregisterContentScripts({ ids: gone });
    const [old, fresh] = [wanted.filter(({ id }) => has.has(id)), wanted.filter(({ id }) => !has.has(id))];
    if (old.length > 0) await browser.scripting.updateContentScripts(old);
    if (fresh.length > 0) await browser.scripting.registerContentScripts(fresh);
    return { origins, changed: true };
  }

  /** Reads open tabs: those of these origins, or all that are granted. */
  async function readOpen(origins: string[], of?: readonly string[]) {
    // The browser shows the address of a tab only where we may read it.
    const open = of
      ? await browser.tabs.query({})
      : origins.length
        ? await browser.tabs.query({ url: origins })
        : [];
    const tabs = of ? open.filter(({ url }) => url && of.includes(originOf(url) ?? '')) : open;
    await Promise.all(
      tabs.map((tab) => tab.id !== undefined && read(tab.id, tab.url).catch(() => undefined)),
    );
  }

  /** Reads a tab now: asks the reader that is there, or brings one. Throws where the browser allows none. */
  async function read(tab: number, url?: string): Promise<void> {
    const address = url ?? (await browser.tabs.get(tab).catch(() => undefined))?.url ?? '';
    const site = siteOf(await sites(), address);
    if (site?.paused) return;
    const taught = site !== undefined && isTaught(site);
    const there = await browser.tabs
      .sendMessage(tab, { strandline: 'again', request: { taught } }, { frameId: 0 })
      .catch(() => undefined);
    if (there) return;
    const target = { tabId: tab, allFrames: true };
    await browser.scripting.executeScript({ target, files: filesFor(taught) });
  }

  return {
    read,
    /** Gives back every origin that may be given back (those the build itself asks for stay) and takes the script off. */
    async forget(): Promise<void> {
      const { origins = [] } = await browser.permissions.getAll();
      for (const origin of origins)
        await browser.permissions.remove({ origins: [origin] }).catch(() => false);
      await browser.scripting.unregisterContentScripts({ ids }).catch(() => undefined);
      await this.sync();
    },
    /** Called whenever grants change, or sites: then only open tabs of those are read. */
    sync: (of?: readonly string[]) =>
      inTurn(async () => {
        const { origins } = await register();
        await readOpen(origins, of);
      }),
    /** Called by every worker as it starts: the one before may have been stopped on its way through a `sync`. */
    settle: () =>
      inTurn(async () => {
        const { origins, changed } = await register();
        if (changed) await readOpen(origins);
      }),
  };
}
