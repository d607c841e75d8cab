import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Worker } from 'playwright-core';
import { findChromium, noChromium } from '../run/browsers.ts';
import { root } from '../run/steps.ts';

/** The two builds: `localhost` reads pages on localhost by itself, `shipped` only on a press. */
export type Build = 'localhost' | 'shipped';

export const builtAt = (build: Build) =>
  join(root, '.output', build === 'localhost' ? 'chrome-mv3-localhost' : 'chrome-mv3');

// Flags as root without a display and without a network: machines answer for nothing else.
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--enable-unsafe-extension-debugging',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost',
];

export type Opened = {
  context: BrowserContext;
  /** The extension's id. */
  id: string;
  /** The background's worker, awake. */
  worker(): Promise<Worker>;
  close(): Promise<void>;
};

export type Options = {
  build?: Build;
  /** The folder with the build, where it is another than it was built in. */
  at?: string;
  headless?: boolean;
  scheme?: 'light' | 'dark';
  /** Where Chromium writes its network log, if anywhere. */
  netLog?: string;
  /** A profile folder to use and keep; a new empty one is made and removed otherwise. */
  profile?: string;
  width?: number;
};

/** Opens a real Chromium with the built extension, on an empty profile. */
export async function openChromium(options: Options = {}): Promise<Opened> {
  const found = findChromium();
  if (!found) throw new Error(noChromium);
  const extension = options.at ?? builtAt(options.build ?? 'localhost');
  const profile = options.profile ?? mkdtempSync(join(tmpdir(), 'strandline-profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: found.path,
    headless: options.headless ?? true,
    viewport: { width: options.width ?? 1200, height: 900 },
    colorScheme: options.scheme ?? 'light',
    args: [
      ...flags,
      ...(options.netLog ? [`--log-net-log=${options.netLog}`] : []),
      ...(found.branded ? [] : [`--disable-extensions-except=${extension}`, `--load-extension=${extension}`]),
    ],
    ignoreDefaultArgs: ['--disable-extensions'],
  });
  let id = '';
  if (found.branded) {
    const session = await context.browser()!.newBrowserCDPSession();
    // Newer than Playwright's types of the protocol.
    const send = session.send as (method: string, params: object) => Promise<{ id: string }>;
    id = (await send.call(session, 'Extensions.loadUnpacked', { path: extension })).id;
  }
  const worker = async () => {
    const awake = context.serviceWorkers().find((one) => one.url().startsWith('chrome-extension://'));
    if (awake) return awake;
    return context.waitForEvent('serviceworker', { timeout: 15_000 });
  };
  id ||= new URL((await worker()).url()).host;
  return {
    context,
    id,
    worker,
    close: async () => {
      await context.close();
      if (!options.profile) rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
