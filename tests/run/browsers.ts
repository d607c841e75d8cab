// Finds real browsers on this machine, and installs Debian's where that is allowed.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const chromiums = ['chromium', 'chromium-browser'];
// Branded Chrome ignores --load-extension since version 137: it is driven another way (demo.ts).
const brands = ['google-chrome-stable', 'google-chrome', 'chrome'];
const firefoxes = ['firefox-esr', 'firefox'];
const elsewhere: Record<string, string[]> = {
  chromium: ['/Applications/Chromium.app/Contents/MacOS/Chromium', '/snap/bin/chromium'],
  'google-chrome': [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  ],
  firefox: [
    '/Applications/Firefox.app/Contents/MacOS/firefox',
    'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
  ],
};

function first(names: string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  for (const name of names)
    for (const path of [...folders.map((folder) => join(folder, name)), ...(elsewhere[name] ?? [])])
      if (existsSync(path)) return path;
  return undefined;
}

const debian = () => existsSync('/etc/debian_version') && process.getuid?.() === 0;

/** Installs a package of Debian's when this is Debian and we are root; says what it does. */
function install(name: string): boolean {
  if (!debian()) return false;
  console.log(`No browser for this found: installing Debian's ${name} (apt-get)`);
  const apt = (...args: string[]) =>
    spawnSync('apt-get', ['-q', '-y', '-o', 'Dpkg::Use-Pty=0', ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0;
  apt('update');
  return apt('install', '--no-install-recommends', name, 'fonts-liberation', 'fonts-dejavu-core');
}

export type Found = { path: string; branded: boolean };

/** Chromium, or else branded Chrome, or Debian's chromium installed now. STRANDLINE_CHROMIUM overrides. */
export function findChromium(): Found | undefined {
  const chosen = process.env.STRANDLINE_CHROMIUM ?? first(chromiums);
  if (chosen) return { path: chosen, branded: /google|chrome(\.exe)?$/i.test(chosen) };
  const branded = first(brands);
  if (branded) return { path: branded, branded: true };
  const path = install('chromium') ? first(chromiums) : undefined;
  return path ? { path, branded: false } : undefined;
}

/** Firefox, or Debian's firefox-esr installed now; undefined where there is none. */
export function findFirefox(): string | undefined {
  return (
    process.env.STRANDLINE_FIREFOX ??
    first(firefoxes) ??
    (install('firefox-esr') ? first(firefoxes) : undefined)
  );
}

export const noChromium =
  'No Chromium or Chrome was found: install Chromium (Debian: apt-get install chromium), or name one in STRANDLINE_CHROMIUM.';
