import { join } from 'node:path';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { findFirefox } from '../run/browsers.ts';
import { root } from '../run/steps.ts';
import type { Build } from './chromium.ts';
import { until } from './harness.ts';

const id = 'strandline@strandline.example';
// Firefox makes up the address of an extension's pages for each profile; this one is set beforehand.
const uuid = '5e1f0c5e-0b5e-4b1e-9c0e-57a4d11e0001';

/** The part of Puppeteer's BiDi browser that its types leave out. */
type WithConnection = {
  connection: { send(method: string, params: object): Promise<{ result: Record<string, unknown> }> };
};

/** Opens a real headless Firefox with the built extension, driven by WebDriver BiDi. */
export async function openFirefox(build: Build = 'localhost') {
  const executablePath = findFirefox();
  if (!executablePath) throw new Error('no Firefox was found');
  const browser: Browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    // Lets a test reach the browser's own window: a press on the toolbar has no other door.
    args: ['--remote-allow-system-access'],
    defaultViewport: { width: 1200, height: 900 },
    extraPrefsFirefox: { 'extensions.webextensions.uuids': JSON.stringify({ [id]: uuid }) },
  });
  await browser.installExtension(
    join(root, '.output', build === 'localhost' ? 'firefox-mv3-localhost' : 'firefox-mv3'),
  );
  const bidi = (method: string, params: object) =>
    (browser as unknown as WithConnection).connection.send(method, params).then(({ result }) => result);

  /** Evaluates in the browser's own window, with its privileges; the value must be a string. */
  async function inChrome(code: string): Promise<string> {
    const { contexts } = (await bidi('browsingContext.getTree', { 'moz:scope': 'chrome' })) as {
      contexts: { context: string }[];
    };
    const answer = (await bidi('script.evaluate', {
      target: { context: contexts[0]?.context },
      awaitPromise: true,
      expression: `(async () => {
        const policy = WebExtensionPolicy.getByID(${JSON.stringify(id)});
        const { ExtensionParent } = ChromeUtils.importESModule('resource://gre/modules/ExtensionParent.sys.mjs');
        const action = ExtensionParent.apiManager.global.browserActionFor(policy.extension);
        const tab = gBrowser.selectedTab;
        ${code}
      })()`,
    })) as { type: string; result: { value?: string }; exceptionDetails?: { text: string } };
    if (answer.type !== 'success') throw new Error(answer.exceptionDetails?.text);
    return answer.result.value ?? '';
  }

  // The first run's own tab comes to the front by itself: later it would take a key or a press away from another.
  if (build === 'shipped')
    await until(
      () => inChrome(`return gBrowser.tabs.map((one) => one.linkedBrowser.currentURI.spec).join(' ');`),
      (tabs) => tabs.includes('/welcome.html'),
    );

  return {
    browser,
    open: async (url: string): Promise<Page> => {
      const page = await browser.newPage();
      await page.goto(url);
      return page;
    },
    /** A page of the extension in a tab. */
    panelPage: async (path = 'sidepanel.html'): Promise<Page> => {
      const page = await browser.newPage();
      // The page opens, but the driver is not told that it did: look for what it draws instead.
      await page.goto(`moz-extension://${uuid}/${path}`, { timeout: 2000 }).catch(() => undefined);
      await page.waitForSelector('main, .panel');
      return page;
    },
    /** The toolbar badge of the page, brought to front. */
    badge: async (page: Page): Promise<string> => {
      await page.bringToFront();
      return inChrome(`return String(action.action.getProperty(tab, 'badgeText') ?? '');`);
    },
    /** A press on the toolbar button while the page is in front. */
    press: async (page: Page): Promise<void> => {
      await page.bringToFront();
      await inChrome(`await action.triggerAction(window); return '';`);
    },
    /** Alt+Shift and a letter while the page is in front: the browser's own key of the extension, as it runs once it is pressed. */
    shortcut: async (page: Page, letter: string): Promise<void> => {
      await page.bringToFront();
      await inChrome(`
        const keys = [...document.querySelectorAll('keyset[id^="ext-keyset"] key[modifiers="alt,shift"]')];
        keys.find((each) => each.getAttribute('key') === ${JSON.stringify(letter)}).doCommand();
        return '';
      `);
    },
    /** All names that a screen reader is told of the tab in front. */
    accessible: (): Promise<string> =>
      inChrome(`
        const service = Cc['@mozilla.org/accessibilityService;1'].getService(Ci.nsIAccessibilityService);
        await new Promise((ready) => setTimeout(ready, 1500));
        const names = [];
        const walk = (node) => {
          names.push(node.name);
          for (let child = node.firstChild; child; child = child.nextSibling) walk(child);
        };
        walk(service.getAccessibleFor(gBrowser.selectedBrowser));
        return names.join(' | ');
      `),
    close: () => browser.close(),
  };
}
