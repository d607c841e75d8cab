// `npm run gallery [names]`: every surface and state of the built extension as PNGs and one sheet, .output/gallery/.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { PlaceName } from '../../src/ui/world.ts';
import { openShop, until } from '../browser/harness.ts';
import type { SeedName } from '../browser/seeds.ts';
import { look, places, seed, tabOf } from '../browser/views.ts';
import { shootPages } from './gallery-pages.ts';
import { root, run } from './steps.ts';

const wanted = process.argv.slice(2);
const folder = join(root, '.output', 'gallery');
if (wanted.length === 0) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

if (
  !process.env.STRANDLINE_BUILT &&
  run('wxt', ['build', '--mode', 'localhost'], { quiet: true }).status !== 0
)
  throw new Error('the build failed: npx wxt build --mode localhost says why');

const shop = await openShop();
const shots: { name: string; about: string; wide: boolean }[] = [];
const panel = await shop.panelPage();
const problems: string[] = [];
panel.on('pageerror', (problem) => problems.push(problem.message));

async function shoot(page: Page, name: string, about: string, width: number, whole = true) {
  if (wanted.length > 0 && !wanted.some((each) => name === each || name.startsWith(`${each}-`))) return;
  // Long lists draw what is in view: all of it is.
  const { height = 800 } = page.viewportSize() ?? {};
  for (let more = true; whole && more; ) {
    const tall = await page.evaluate(() => document.documentElement.scrollHeight);
    more = tall > (page.viewportSize()?.height ?? 0) && tall < 12_000;
    if (more) await page.setViewportSize({ width: page.viewportSize()!.width, height: tall });
    await page.waitForTimeout(60);
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  if (wide) problems.push(`${name}: wider than its ${width} pixels`);
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage: whole });
  if (whole) await page.setViewportSize({ width: page.viewportSize()!.width, height });
  shots.push({ name, about, wide: width > 500 });
  console.log(`${name}.png  ${about}`);
}

type State = {
  name: string;
  about: string;
  seed: SeedName;
  width?: number;
  scheme?: 'light' | 'dark';
  language?: 'en-XA' | 'ar-XB' | 'de' | 'fr';
  print?: true;
  zoom?: number;
  only?: PlaceName[];
  forced?: true;
  /** What is pressed once the place stands. */
  press?: string;
  /** Path in the shop of the tab in view. */
  shows?: string;
};

const shows = '/goods/heavy-weather-mask';
const states: State[] = [
  { name: 'empty', about: 'nothing kept, no list in the tab', seed: 'empty' },
  { name: 'one', about: 'one of everything', seed: 'one', shows },
  { name: 'many', about: 'a full shelf', seed: 'many', shows },
  { name: 'many-dark', about: 'a full shelf, dark', seed: 'many', shows, scheme: 'dark' },
  { name: 'empty-dark', about: 'nothing kept, dark', seed: 'empty', scheme: 'dark' },
  { name: 'long', about: 'long names', seed: 'long', shows },
  { name: 'wide', about: 'as a whole page', seed: 'many', shows, width: 1100 },
  { name: 'rtl', about: 'right to left, longer words', seed: 'many', shows, language: 'ar-XB' },
  { name: 'german', about: 'in German', seed: 'many', shows, language: 'de' },
  { name: 'french', about: 'in French', seed: 'many', shows, language: 'fr' },
  { name: 'pseudo', about: 'longer, accented words', seed: 'many', shows, language: 'en-XA' },
  { name: 'forced', about: 'forced colours', seed: 'many', shows, forced: true },
  { name: 'forced-dark', about: 'forced colours, dark', seed: 'many', shows, forced: true, scheme: 'dark' },
  { name: 'long-wide', about: 'long names, as a whole page', seed: 'long', shows, width: 1100 },
  {
    name: 'twelve',
    about: 'twelve people',
    seed: 'twelve',
    shows,
    only: ['page', 'hair'],
    press: '#whom ~ details summary',
  },
  {
    name: 'sixty',
    about: 'sixty people',
    seed: 'sixty',
    shows,
    only: ['page', 'hair'],
    press: '#whom ~ details summary',
  },
  { name: 'zoom', about: '320 px at 200 %', seed: 'many', shows, zoom: 2 },
  { name: 'print', about: 'printed', seed: 'many', shows, print: true, width: 700 },
];

for (const state of states) {
  if (wanted.length > 0 && !wanted.some((name) => name === state.name || name.startsWith(`${state.name}-`)))
    continue;
  const width = state.width ?? 320;
  const tabPage = state.shows ? await shop.open(state.shows) : undefined;
  if (tabPage)
    await until(
      () => shop.badge(tabPage),
      (text) => text !== '',
      20_000,
    );
  const tab = tabPage ? await tabOf(shop, tabPage) : -1;
  await panel.bringToFront();
  await seed(
    panel,
    state.seed,
    state.language ? [{ do: 'set', settings: { language: state.language } }] : [],
  );
  await panel.setViewportSize({ width: Math.round(width / (state.zoom ?? 1)), height: 800 });
  await panel.emulateMedia({
    colorScheme: state.scheme ?? 'light',
    media: state.print ? 'print' : 'screen',
    forcedColors: state.forced ? 'active' : 'none',
  });
  for (const place of state.only ?? places) {
    const name = `${state.name}-${place}`;
    if (wanted.length > 0 && !wanted.includes(state.name) && !wanted.includes(name)) continue;
    await look(shop, panel, place, tab);
    const pressed = state.press && panel.locator(state.press).first();
    if (pressed && (await pressed.count()) > 0) await pressed.click();
    await shoot(panel, name, `${place}: ${state.about}`, width);
  }
  await tabPage?.close();
}
await panel.emulateMedia({ colorScheme: 'light', media: 'screen', forcedColors: 'none' });
if (wanted.length === 0 || wanted.includes('welcome')) {
  await seed(panel, 'empty');
  for (const [name, width, scheme] of [
    ['welcome', 900, 'light'],
    ['welcome-narrow', 320, 'light'],
    ['welcome-zoom', 160, 'light'],
    ['welcome-broad', 1920, 'light'],
    ['welcome-dark', 900, 'dark'],
  ] as const) {
    await panel.setViewportSize({ width, height: 800 });
    await panel.emulateMedia({ colorScheme: scheme });
    await panel.goto(`chrome-extension://${shop.id}/welcome.html`);
    await panel.waitForSelector('.painted');
    await shoot(panel, name, `first run, ${width} px, ${scheme}`, width);
  }
}
if (wanted.length === 0 || wanted.some((name) => name.startsWith('shop')))
  await shootPages(shop, panel, (page, name, about, width) => shoot(page, name, about, width, false));
await shop.close();

writeFileSync(
  join(folder, 'index.html'),
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Strandline: gallery</title>
<style>body{font:14px/1.4 system-ui;margin:2rem;background:#ddd}main{display:flex;flex-wrap:wrap;gap:1.5rem;align-items:flex-start}figure{margin:0}img{display:block;width:320px;box-shadow:0 1px 6px #0004}.wide img{width:760px}figcaption{max-width:320px;margin-block:.25rem}</style>
<main>${shots.map(({ name, about, wide }) => `<figure${wide ? ' class="wide"' : ''}><figcaption><b>${name}</b><br>${about}</figcaption><img src="${name}.png" alt="${about}" loading="lazy"></figure>`).join('\n')}</main></html>\n`,
);
console.log(`${shots.length} pictures and index.html in .output/gallery/`);
for (const problem of problems) console.log(`look: ${problem}`);
process.exit(problems.length > 0 ? 1 : 0);
