import type { WxtBrowser } from 'wxt/browser';
import type { Site } from '../../src/store/remembered.ts';

type Browser = Pick<WxtBrowser, 'permissions' | 'scripting' | 'tabs'>;

const js = ['content-scripts/reader.js'];
const id = 'reader';

/** Match pattern of an origin. Ports are left to the reader's own check: not every browser knows them here. */
const patternOf = (origin: string) => (new URL(origin).port ? [] : [`${origin}/*`]);

/**
 * Where pages are read: one content script, registered for the origins the reader granted minus the sites they
 * paused, and put into the open tabs that have none yet.
 */
export function createReach(browser: Browser, sites: () => Promise<readonly Site[]>) {
  let turn: Promise<unknown> = Promise.resolve();

  async function register() {
    const [{ origins = [] }, known, registered] = await Promise.all([
      browser.permissions.getAll(),
      sites(),
      browser.scripting.getRegisteredContentScripts({ ids: [id] }),
    ]);
    if (origins.length === 0) {
      if (registered.length > 0) await browser.scripting.unregisterContentScripts({ ids: [id] });
      return;
    }
    const script = {
      id,
      js,
      matches: origins,
      excludeMatches: known.filter(({ paused }) => paused).flatMap(({ origin }) => patternOf(origin)),
      allFrames: true,
      runAt: 'document_idle' as const,
    };
    if (registered.length > 0) await browser.scripting.updateContentScripts([script]);
    else await browser.scripting.registerContentScripts([script]);
    const tabs = await browser.tabs.query({ url: origins });
    await Promise.all(tabs.map((tab) => tab.id !== undefined && read(tab.id).catch(() => undefined)));
  }

  /** Reads a tab now: asks the reader that is there, or brings one. Throws where the browser allows none. */
  async function read(tab: number): Promise<void> {
    const there = await browser.tabs
      .sendMessage(tab, { strandline: 'again', request: null }, { frameId: 0 })
      .catch(() => undefined);
    if (there) return;
    const target = { tabId: tab, allFrames: true };
    await browser.scripting.executeScript({ target, files: js });
  }

  return {
    read,
    /** Gives back every origin that may be given back (those the build itself asks for stay) and takes the script off. */
    async forget(): Promise<void> {
      const { origins = [] } = await browser.permissions.getAll();
      for (const origin of origins)
        await browser.permissions.remove({ origins: [origin] }).catch(() => false);
      await browser.scripting.unregisterContentScripts({ ids: [id] }).catch(() => undefined);
      await this.sync();
    },
    /** One at a time; called whenever grants or paused sites change. */
    sync(): Promise<void> {
      const done = turn.then(register);
      turn = done.catch(() => undefined);
      return done;
    },
  };
}
