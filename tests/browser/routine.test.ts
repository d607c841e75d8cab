// The third moment: a product met in a shop joins a wash day, and everything that follows, in a real Chromium.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Remembered } from '../../src/store/remembered.ts';
import { root } from '../run/steps.ts';
import { goodOf } from '../store/goods.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { look, tabOf } from './views.ts';

let shop: Harness;
let panel: Page;
beforeAll(async () => {
  shop = await openShop();
  panel = await shop.panelPage();
  await panel.setViewportSize({ width: 380, height: 900 });
});
afterAll(() => shop.close());

const words = async () => ((await panel.locator('body').textContent()) ?? '').replace(/\s+/g, ' ');
const says = (text: string | RegExp) =>
  until(words, (now) => (typeof text === 'string' ? now.includes(text) : text.test(now)));
const press = (name: string | RegExp) => panel.getByRole('button', { name }).first().click();
const place = (name: string) => panel.getByRole('tab', { name }).click();
const remembered = () => shop.remembered();

/** A plain PNG, as large as a photo (PNG specification, third edition: signature, IHDR, IDAT, IEND). */
function greyPng(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const [size, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([size, body, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.alloc((width + 1) * height))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Opens a product's page in the shop and the panel beside it. */
async function meet(id: string) {
  const page = await shop.open(`/goods/${id}`);
  await until(
    () => shop.badge(page),
    (text) => text !== '',
  );
  await look(shop, panel, 'page', await tabOf(shop, page));
  await says(goodOf(id)!.name);
  return page;
}

async function addToRoutine(id: string) {
  const page = await meet(id);
  await press('Add to routine…');
  await panel.locator('#adding').waitFor();
  // Where neither data nor words of the page tell the kind, the reader does.
  const kind = panel.getByLabel('Add it as');
  if ((await kind.inputValue()) === '') await kind.selectOption(goodOf(id)!.kind);
  await until(
    () => panel.getByRole('button', { name: 'Add to routine', exact: true }).isEnabled(),
    (can) => can,
  );
  const around = panel.getByLabel(/^With the usual steps around it/);
  if (await around.count()) await around.uncheck();
  const preview = ((await panel.locator('#adding').textContent()) ?? '').replace(/\s+/g, ' ');
  await press(/^Add to routine$/);
  await panel.locator('#adding').waitFor({ state: 'detached' });
  await page.close();
  await panel.bringToFront();
  return preview;
}

it('from the first profile to the same state after a wipe', async () => {
  // First profile.
  await look(shop, panel, 'hair');
  await press(/^Coarse/);
  await press(/^Low/);
  await press('None of these');
  await until(remembered, ({ heads }) => heads[0]?.damage !== undefined);

  // Two shops' worth of a wash day; the first product begins the routine.
  await addToRoutine('bellbuoy-conditioner');
  expect((await remembered()).routines[0]?.steps.map(({ kind }) => kind)).toEqual(['conditioner']);
  await addToRoutine('porridge-cream-cleanser');
  expect((await remembered()).routines[0]?.steps.map(({ kind }) => kind)).toEqual([
    'cleanser',
    'conditioner',
  ]);
  const kept = await meet('linen-gel');
  await press('Keep');
  await until(remembered, ({ products }) => products.length === 3);
  await kept.close();
  await panel.bringToFront();

  // The preview says what stacks before anything is changed; then the finding stands by its step.
  const preview = await addToRoutine('isinglass-gel');
  expect(preview).toContain('What it adds');
  expect(preview).toContain('Your gel would be the first product with protein.');
  expect(preview).toContain('builds up from wash to wash');
  expect(await says('What it adds up to')).toContain('more protein than your hair takes');
  const step = panel.locator('.step-row', { hasText: goodOf('isinglass-gel')!.name });
  await expect.poll(() => step.textContent()).toContain('too much protein');
  await screens(panel, 'routine-finding', true);

  // The smallest change, among the products only considered, and one press for it.
  const considered = panel.getByLabel('Also look among products I am thinking about');
  const linen = `${goodOf('linen-gel')!.name} (thinking about it)`;
  await says(`gel: ${linen} instead of`);
  await considered.uncheck();
  await until(
    () => panel.locator('#suggestions').textContent(),
    (words) => !words?.includes(linen) && Boolean(words?.includes('Leave out')),
  );
  await considered.check();
  expect(await says(`gel: ${linen} instead of`)).toContain(`gel: ${linen} instead of`);
  await press('Do this');
  const settled = await says('Nothing is too much and nothing is missing.');
  expect(settled).toContain('Nothing is too much and nothing is missing.');
  await expect.poll(() => panel.locator('#suggestions').count()).toBe(0);
  await screens(panel, 'routine-settled', true);

  // And back, and again: undo holds for a suggestion as for anything else.
  await press('Undo');
  await says(goodOf('isinglass-gel')!.name);
  const linenId = (await remembered()).products.find(({ name }) => name === goodOf('linen-gel')!.name)?.id;
  await expect.poll(async () => (await remembered()).routines[0]?.steps.at(-1)?.product).not.toBe(linenId);
  await says(`gel: ${linen} instead of`);
  await press('Do this');
  await says('Nothing is too much and nothing is missing.');

  // Order by keyboard, said aloud.
  await panel.getByRole('button', { name: /^Move the gel, place 3 of 3/ }).focus();
  await panel.keyboard.press('ArrowUp');
  await says('gel moved to place 2 of 3.');
  expect((await remembered()).routines[0]?.steps.map(({ kind }) => kind)).toEqual([
    'cleanser',
    'gel',
    'conditioner',
  ]);
  await until(
    () => panel.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? ''),
    (name) => name.startsWith('Move the gel, place 2'),
  );
  // And by dragging, once the rows stand where the new order's findings leave them.
  const handle = panel.getByRole('button', { name: /^Move the gel, place 2/ });
  const lowest = panel.locator('.step-row').last();
  await handle.scrollIntoViewIfNeeded();
  await lowest.scrollIntoViewIfNeeded();
  const stood: string[] = [];
  const boxes = () => Promise.all([handle.boundingBox(), lowest.boundingBox()]);
  const [from, last] = await until(boxes, (now) => {
    stood.push(JSON.stringify(now));
    return stood.length > 8 && new Set(stood.slice(-8)).size === 1;
  });
  await panel.mouse.move(from!.x + 5, from!.y + 10);
  await panel.mouse.down();
  await panel.mouse.move(from!.x + 5, last!.y + last!.height - 4, { steps: 6 });
  await panel.mouse.up();
  await until(remembered, ({ routines }) => routines[0]?.steps.at(-1)?.kind === 'gel');
  expect((await remembered()).routines[0]?.steps.map(({ kind }) => kind)).toEqual([
    'cleanser',
    'conditioner',
    'gel',
  ]);

  // Log it.
  await press('Log this wash day');
  await panel.getByRole('radio', { name: 'very soft' }).check();
  await panel.getByRole('radio', { name: 'springy', exact: true }).check();
  await panel.getByLabel('Temperature').fill('28');
  await panel.getByLabel('Humidity').fill('80');
  expect(await says(/dew point 24/)).toContain('dew point 24 °C');
  await panel.getByLabel('Notes').fill('Dried soft.');
  await panel
    .getByLabel('Photo')
    .setInputFiles({ name: 'hair.png', mimeType: 'image/png', buffer: greyPng(2048, 1024) });
  await panel.locator('img.log-photo').waitFor();
  await press('Save');
  await says('The wash day is in the log.');
  const before: Remembered = await remembered();
  expect(before.log).toHaveLength(1);
  expect(before.log[0]!.done.steps.map(({ productName }) => productName)).toContain(
    goodOf('linen-gel')!.name,
  );
  expect(before.log[0]!.done.steps.every(({ label }) => label)).toBe(true);
  await screens(panel, 'log-one', true);

  // Everything out, everything gone, everything in again.
  await place('Settings');
  const [file] = await Promise.all([panel.waitForEvent('download'), press('Save everything as a file')]);
  const path = (await file.path())!;
  expect(JSON.parse(readFileSync(path, 'utf8'))).toBeTypeOf('object');
  await panel.getByLabel('Yes, I want that').check();
  await press(/^Delete everything$/);
  await until(remembered, ({ heads, log }) => heads.length + log.length === 0);
  expect(await remembered()).toMatchObject({ heads: [], products: [], routines: [], log: [] });
  await panel.getByLabel('Import a file').setInputFiles(path);
  await press(/^Import$/);
  await expect.poll(remembered).toEqual(before);

  // The photo came back with it, small.
  await place('Log');
  await panel.locator('.log-entry summary').click();
  const photo = panel.locator('img.log-photo');
  await photo.waitFor();
  expect(await photo.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.src.slice(0, 15)])).toEqual([
    1024,
    'data:image/jpeg',
  ]);
}, 120_000);

it('the wash day is taken along: picture, table, text, calendar, paper', async () => {
  await place('Routine');
  await panel.locator('.wash-day-chart').first().waitFor();
  await panel.bringToFront();
  await panel.getByText('Export or print').click();
  const saved = async (name: string) => {
    const [file] = await Promise.all([panel.waitForEvent('download'), press(name)]);
    return { name: file.suggestedFilename(), bytes: readFileSync((await file.path())!) };
  };
  const svg = await saved('Picture (SVG)');
  expect(svg.name).toBe('wash-day.svg');
  const [, width, height] = /viewBox="\S+ \S+ (\d+) (\d+)"/.exec(String(svg.bytes))!;
  expect(String(svg.bytes)).not.toMatch(/light-dark|var\(/);
  const png = await saved('Picture (PNG)');
  // PNG, third edition, 11.2.2: width and height are the first eight bytes of IHDR, at offset 16.
  expect([png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)]).toEqual([
    2 * Number(width),
    2 * Number(height),
  ]);
  mkdirSync(join(root, '.output', 'screens'), { recursive: true });
  writeFileSync(join(root, '.output', 'screens', 'wash-day-export.png'), png.bytes);
  expect(String((await saved('Table (CSV)')).bytes).split('\r\n')).toHaveLength(4);
  await panel.getByText('Hand it over', { exact: true }).first().click();
  expect(String((await saved('Plain text')).bytes)).toContain('3. gel: ');
  expect(String((await saved('Save as calendar file')).bytes)).toMatch(/^BEGIN:VCALENDAR\r\n/);
  // The sheet alone, on both papers, on one page each.
  for (const format of ['A4', 'Letter'] as const) {
    await panel.evaluate(() => {
      document.documentElement.dataset.print = 'sheet';
    });
    const pdf = await panel.pdf({ format, path: join(root, '.output', 'screens', `wash-day-${format}.pdf`) });
    expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)]).toHaveLength(1);
    await panel.emulateMedia({ media: 'print' });
    await screens(panel, `wash-day-sheet-${format}`, true);
    await panel.emulateMedia({ media: null });
    await panel.evaluate(() => {
      delete document.documentElement.dataset.print;
    });
  }
}, 60_000);

it('of a thousand wash days only those near the view are drawn', async () => {
  const [head] = (await remembered()).heads;
  const [entry] = (await remembered()).log;
  const day = (n: number) => new Date(Date.parse('2026-11-01') - n * 86_400_000).toISOString().slice(0, 10);
  const { photo: _, ...plain } = entry!;
  for (let from = 0; from < 1000; from += 250)
    await shop.change(
      Array.from({ length: 250 }, (_, n) => ({
        do: 'put' as const,
        thing: 'log' as const,
        value: {
          ...plain,
          id: `many-${from + n}`,
          head: head!.id,
          date: day(from + n),
          notes: `Day ${from + n}.`,
        },
      })),
    );
  await look(shop, panel, 'log');
  await panel.bringToFront();
  await panel.locator('.log-entry').first().waitFor();
  await panel.waitForTimeout(500);
  const longest = await panel.evaluate(async () => {
    const long: number[] = [0];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) long.push(duration);
    }).observe({ type: 'longtask' });
    let most = 0;
    for (let top = 0; top < 40_000; top += 400) {
      scrollTo(0, top);
      await new Promise((next) => requestAnimationFrame(next));
      most = Math.max(most, document.querySelectorAll('.log-entry').length);
    }
    await new Promise((next) => setTimeout(next, 300));
    return { long, most, height: document.documentElement.scrollHeight };
  });
  // What a loaded machine makes of it is no fault of the list: the time is printed, what is drawn is asserted.
  console.log(
    'scrolling 1,000 log entries: tasks above 50 ms:',
    longest.long.slice(1).map(Math.round).join(' ') || 'none',
  );
  expect(longest.height).toBeGreaterThan(50_000);
  expect(longest.most).toBeLessThanOrEqual(120);
}, 180_000);
