// `npm run demo`: builds the extension, serves the invented shop, and opens a real browser with both.
import { mkdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Page } from 'playwright-core';
import { usualUse } from '../../src/core/product/product.ts';
import type { Mention, Reading } from '../../src/core/reading/reading.ts';
import { type Harness, openShop, painted, until } from '../browser/harness.ts';
import { reveal } from '../browser/reveal.ts';
import { type Good, goodOf } from '../store/goods.ts';
import { findChromium, noChromium } from './browsers.ts';
import { root, run } from './steps.ts';

const shown = ['oakum-protein-treatment', 'low-tide-deep-conditioner', 'gossamer-leave-in'];
const folder = join(root, '.output', 'demo');

const percent = (value: number) =>
  value >= 10 ? value.toFixed(0) : value.toPrecision(2).replace(/\.0$/, '');
const what = ({ found, protein, moisture }: Mention) =>
  found.how === 'none'
    ? 'not known'
    : [protein && `${protein.kind} (${protein.size})`, ...moisture].filter(Boolean).join(', ');

/** One mention to a line: place, letters, share the label allows, what it is. */
function inWords(reading: Reading): string {
  const rows = reading.mentions.map((mention, at) => {
    const { min, max } = mention.share;
    const place = String(at + 1).padStart(4);
    return `${place}  ${mention.raw.padEnd(52)} ${`${percent(min)}–${percent(max)} %`.padStart(12)}  ${what(mention)}`;
  });
  return [...rows, `      protein: ${reading.protein}; moisture: ${reading.moisture}`].join('\n');
}

/** Brings the first underlined name to the middle of the view. */
const scrollToList = (page: Page) =>
  page.evaluate(() => {
    const [first] = [...CSS.highlights.values()].flatMap((highlight) => [...highlight]);
    first?.startContainer.parentElement?.scrollIntoView({ block: 'center' });
  });

async function visit(shop: Harness, good: Good) {
  const page = await shop.open(`/goods/${good.id}`);
  await reveal((control) => page.click(control), good.structure);
  await until(
    () => painted(page),
    (now) => now.strip !== '',
  );
  await scrollToList(page);
  await page.waitForTimeout(400);
  await page.screenshot({ path: join(folder, `${good.id}.png`) });
  const unfold = page.locator('[data-strandline] .strip').getByRole('button', { name: 'Unfold' });
  if (await unfold.isVisible()) await unfold.click();
  const { strip } = await painted(page);
  const badge = await shop.badge(page);
  const found = await shop.keptOf(await shop.tabOf(page));
  const texts = (found?.lists ?? []).map(({ text }) => ({ text, use: usualUse[good.kind] }));
  const readings = await shop.ask('read', texts);
  console.log(`\n${good.name}, ${good.maker} · toolbar badge: ${badge || 'empty'}`);
  console.log(`   on the page: ${strip || 'nothing'}`);
  for (const reading of readings) console.log(inWords(reading));
  await page.close();
}

async function demo(): Promise<number> {
  const browser = findChromium();
  if (!browser) {
    console.error(noChromium);
    return 1;
  }
  const built = run('wxt', ['build', '--mode', 'localhost'], { quiet: true });
  if (built.status !== 0) {
    console.error(`The extension could not be built:\n${built.stdout}${built.stderr}`);
    return 1;
  }
  const display = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
  const shop = await openShop({ headless: !display });
  console.log(`The invented shop stands at ${shop.store.url}, in ${browser.path}.`);
  try {
    if (display) {
      await shop.open('/');
      console.log('Have a look around; this command ends when the browser is closed.');
      await new Promise((closed) => shop.context.on('close', closed));
      return 0;
    }
    mkdirSync(folder, { recursive: true });
    const page = await shop.open('/');
    await page.screenshot({ path: join(folder, 'category.png') });
    console.log(`\nAll goods: ${await page.locator('.card').count()} products`);
    for (const id of shown) await visit(shop, goodOf(id)!);
    console.log(
      `\nThere is no display, so the browser ran headless; screenshots: ${relative(process.cwd(), folder)}/`,
    );
    return 0;
  } finally {
    await shop.close();
  }
}

process.exitCode = await demo();
