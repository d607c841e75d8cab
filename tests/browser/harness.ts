// What every end-to-end test needs: a real Chromium with the built extension, and the invented shop.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import {
  ask as askOver,
  type MessageName,
  type Messages,
  type TabPage,
  tabPageKey,
} from '../../src/contract/messages.ts';
import { lines } from '../../src/contract/paint-order.ts';
import type { Change, Remembered } from '../../src/store/remembered.ts';
import { root } from '../run/steps.ts';
import { serveStore } from '../store/serve.ts';
import { type Options, openChromium } from './chromium.ts';

/** Asks until the answer is the one wanted. Throws with the last answer where it never is. */
export async function until<T>(ask: () => Promise<T>, good: (answer: T) => boolean, ms = 20_000): Promise<T> {
  const end = Date.now() + ms;
  for (;;) {
    const answer = await ask();
    if (good(answer)) return answer;
    if (Date.now() > end) {
      const last = JSON.stringify(answer) ?? String(answer);
      throw new Error(`Waited ${ms} ms for ${good}; the last answer: ${last.slice(0, 2000)}`);
    }
    await new Promise((next) => setTimeout(next, 60));
  }
}

/** What is seen once it has not changed for a second, in six looks or more. */
export function atRest<T>(look: () => Promise<T>, same: (a: T, b: T) => boolean): Promise<T> {
  let first: { seen: T; since: number; looks: number } | undefined;
  return until(
    look,
    (now) => {
      if (!first || !same(first.seen, now)) first = { seen: now, since: Date.now(), looks: 0 };
      return ++first.looks > 6 && Date.now() - first.since > 1000;
    },
    30_000,
  );
}

export type Harness = Awaited<ReturnType<typeof openShop>>;

/** Opens the shop and a browser with the extension. Close it in `afterAll`. */
export async function openShop(options: Options = {}) {
  const store = await serveStore();
  const opened = await openChromium(options);
  const { context, id, worker } = opened;

  /** A new tab on a path of the shop. */
  const open = async (path = '/'): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(store.url + path);
    return page;
  };

  /** The browser's number of a page's tab, brought to front. */
  const tabOf = async (page: Page): Promise<number> => {
    await page.bringToFront();
    return (await worker()).evaluate(async () => {
      const [tab] = await chrome.tabs.query({ active: true });
      return tab?.id ?? -1;
    });
  };

  /** The toolbar badge of the page, brought to front. */
  const badge = async (page: Page): Promise<string> => {
    const tab = await tabOf(page);
    return (await worker()).evaluate((tabId) => chrome.action.getBadgeText({ tabId }), tab);
  };

  let asker: Page | undefined;
  /** Asks the background as a view of the extension does. */
  const ask = async <N extends MessageName>(name: N, request: Messages[N]['request']) => {
    if (!asker || asker.isClosed()) {
      asker = await context.newPage();
      await asker.goto(`chrome-extension://${id}/icon.svg`);
    }
    const sendMessage = (message: unknown) =>
      asker!.evaluate((sent) => chrome.runtime.sendMessage(sent), message);
    return askOver({ sendMessage }, name, request);
  };

  return {
    ...opened,
    store,
    ask,
    /** What is remembered, asked for as the panel asks. */
    remembered: async () => (await ask('remembered-parts', {})).parts as Remembered,
    /** Changes what is kept, as a form of the panel does. */
    change: (changes: Change[]) => ask('act', { act: { act: 'change', changes }, id: crypto.randomUUID() }),
    open,
    badge,
    /** Waits for the badge to say this; what it says in the end comes back. */
    badgeBecomes: (page: Page, text: string, ms?: number) =>
      until(
        () => badge(page),
        (now) => now === text,
        ms,
      ),
    /** A page of the extension in a tab: `sidepanel.html`, `welcome.html`. */
    panelPage: async (path = 'sidepanel.html'): Promise<Page> => {
      const page = await context.newPage();
      await page.goto(`chrome-extension://${id}/${path}`);
      return page;
    },
    tabOf,
    /** What the background keeps of the page a tab shows. */
    keptOf: async (tab: number): Promise<TabPage | undefined> => {
      const key = tabPageKey(tab);
      const kept = await (await worker()).evaluate((it) => chrome.storage.session.get(it), key);
      return kept[key] as TabPage | undefined;
    },
    /** The panel as a whole page, held to the tab that shows this page of the shop. */
    panelFor: async (page: Page, place = 'page'): Promise<Page> => {
      const tab = await tabOf(page);
      const panel = await context.newPage();
      await panel.goto(`chrome-extension://${id}/sidepanel.html?tab=${tab}#${place}`);
      return panel;
    },
    /** Stops the background's worker as the browser would; the next message from a page wakes it. */
    killWorker: async () => {
      const session = await context.browser()!.newBrowserCDPSession();
      const workers = async () =>
        (await session.send('Target.getTargets')).targetInfos.filter(
          ({ type, url }) => type === 'service_worker' && url.includes(id),
        );
      for (const { targetId } of await workers()) await session.send('Target.closeTarget', { targetId });
      // A page that asks meanwhile has started it again, under the same name.
      await until(workers, (left) => left.length === 0, 2000).catch(() => undefined);
      await session.detach();
    },
    /** A press on the toolbar button while the page is in front. */
    press: async (page: Page) => {
      await page.bringToFront();
      const session = await context.browser()!.newBrowserCDPSession();
      const { targetInfos } = await session.send('Target.getTargets', { filter: [{ type: 'tab' }] });
      const tab = targetInfos.find((target) => target.url === page.url());
      const send = session.send as (method: string, params: object) => Promise<unknown>;
      // Answers only once the extension has handled the press; an extension without a handler never does.
      await Promise.race([
        send.call(session, 'Extensions.triggerAction', { id, targetId: tab?.targetId }),
        new Promise((_, fail) => setTimeout(() => fail(new Error('nothing handled the press')), 8000)),
      ]);
      await session.detach();
    },
    close: async () => {
      await opened.close();
      await store.close();
    },
  };
}

/** The style of the line under the first name that is underlined here, as the browser draws it. Chromium only. */
export const lineStyle = (page: Page, name: string): Promise<string> =>
  page.evaluate((wanted) => {
    for (const [kind, highlight] of CSS.highlights)
      for (const { startContainer, startOffset, endOffset } of highlight) {
        const text = startContainer.textContent?.slice(startOffset, endOffset);
        if (text === wanted)
          return getComputedStyle(startContainer.parentElement!, `::highlight(${kind})`).textDecorationStyle;
      }
    return 'none';
  }, name);

/** What the extension shows in a document: letters under each kind of line, and the words of its strip. */
export type Painted = { lines: Record<string, string[]>; strip: string };

/** Reads what is painted in a page or frame. Lines are `free`, `small`, `large`, `bearing`, `moisture`. */
export const painted = (page: {
  evaluate(read: (kinds: readonly string[]) => Painted, kinds: readonly string[]): Promise<Painted>;
}): Promise<Painted> =>
  page.evaluate((kinds) => {
    const under: Record<string, string[]> = {};
    for (const [name, highlight] of CSS.highlights)
      for (const points of highlight) {
        const range = document.createRange();
        range.setStart(points.startContainer, points.startOffset);
        range.setEnd(points.endContainer, points.endOffset);
        const line = kinds[Math.floor(Number(/\d+$/.exec(name)) / 2)]!; // two of each: light and dark
        under[line] ??= [];
        under[line].push(range.toString());
      }
    const strip = document.querySelector('[data-strandline]')?.shadowRoot?.querySelector('.strip');
    const said = [...(strip?.querySelectorAll<HTMLElement>('[data-t]') ?? [])].map(
      ({ dataset }) => dataset.t,
    );
    return { lines: under, strip: said.join(' ').replace(/\s+/g, ' ').trim() };
  }, lines);

/** Letters under any protein line, in page order within each line. */
export const proteinLetters = ({ lines }: Painted): string[] =>
  ['free', 'small', 'large', 'bearing'].flatMap((line) => lines[line] ?? []);

/** Keeps a picture for a person to look at: .output/screens/<name>.png. */
export async function screens(page: Page, name: string, fullPage = false): Promise<string> {
  const folder = join(root, '.output', 'screens');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}.png`);
  await page.screenshot({ path, fullPage });
  return path;
}
