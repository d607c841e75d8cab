// A wash day handed from one profile to another as a file, in a real Chromium: two profiles that share nothing.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { ProductKind } from '../../src/core/product/product.ts';
import type { Step } from '../../src/core/wash-day/routine.ts';
import { root } from '../run/steps.ts';
import { goods } from '../store/goods.ts';
import { type Harness, openShop, screens, until } from './harness.ts';
import { productOf, robin, wren } from './seeds.ts';

let teacher: Harness;
let student: Harness;
let from: Page;
let to: Page;
const today = new Date().toISOString();
const kinds: ProductKind[] = [
  'cleanser',
  'conditioner',
  'deep-conditioner',
  'protein-treatment',
  'leave-in',
  'gel',
];
const chosen = kinds.flatMap((kind) => goods.find((good) => good.kind === kind) ?? []).map(productOf);
const seldom = new Set<ProductKind>(['deep-conditioner', 'protein-treatment']);
const steps = chosen.map(
  ({ id, kind, use }): Step => ({
    id: `s-${id}`,
    kind: kind!,
    use: use!,
    product: id,
    optional: false,
    cadence: seldom.has(kind!) ? { every: 'nth-wash', n: 4 } : { every: 'wash' },
  }),
);
beforeAll(async () => {
  teacher = await openShop();
  await teacher.change([
    { do: 'put', thing: 'heads', value: { ...robin, added: today } },
    ...chosen.map(
      (value) => ({ do: 'put', thing: 'products', value: { ...value, notes: 'a secret' } }) as const,
    ),
    {
      do: 'put',
      thing: 'routines',
      value: { id: 'day', head: robin.id, name: 'Sunday class', steps, added: today, washEvery: 7 },
    },
    { do: 'set', settings: { headInUse: robin.id, routineInUse: 'day' } },
  ]);
  from = await teacher.panelPage('sidepanel.html#routine');
  await from.setViewportSize({ width: 400, height: 1200 });
  student = await openShop();
  await student.change([{ do: 'put', thing: 'heads', value: { ...wren, added: today } }]);
  to = await student.panelPage('sidepanel.html#routine');
  await to.setViewportSize({ width: 400, height: 1200 });
}, 120_000);
afterAll(async () => {
  await teacher.close();
  await student.close();
});

const press = (panel: Page, name: string | RegExp) => panel.getByRole('button', { name }).first().click();
const kept = (of: Harness) => of.remembered();
let path = '';

it('is shown wash day after wash day, and handed over on one sheet and as a file', async () => {
  await until(
    () => from.locator('#run').textContent(),
    (words) => /strengthening treatment/.test(words ?? ''),
  );
  await expect.poll(() => from.locator('#run .run-day').count()).toBeGreaterThanOrEqual(8);
  await from.locator('#run .run-day').first().click();
  await screens(from, 'plan-run', true);
  await from.getByText('Hand it over', { exact: true }).first().click();
  await from.getByLabel('Your note').fill('Squeeze, do not rub.');
  await from.getByLabel('Your note').blur();
  await until(
    () => kept(teacher),
    ({ routines }) => routines[0]?.note === 'Squeeze, do not rub.',
  );
  await until(
    () => from.locator('.sheet').textContent(),
    (words) => /Squeeze, do not rub\./.test(words ?? ''),
  );
  await screens(from, 'plan-sheet', true);
  for (const format of ['A4', 'Letter'] as const) {
    await from.evaluate(() => {
      document.documentElement.dataset.print = 'sheet';
    });
    const pdf = await from.pdf({
      format,
      path: join(root, '.output', 'screens', `plan-sheet-${format}.pdf`),
    });
    expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length).toBeLessThanOrEqual(2);
    await from.evaluate(() => {
      delete document.documentElement.dataset.print;
    });
  }
  const [picture] = await Promise.all([
    from.waitForEvent('download'),
    press(from, 'The sheet as a picture (PNG)'),
  ]);
  const png = readFileSync((await picture.path())!);
  // PNG, third edition, 11.2.2: the width is at offset 16, the height after it.
  expect(png.readUInt32BE(16)).toBe(2 * 760);
  expect(png.readUInt32BE(20)).toBeGreaterThan(1200);
  writeFileSync(join(root, '.output', 'screens', 'plan-sheet.png'), png);
  const [file] = await Promise.all([
    from.waitForEvent('download'),
    press(from, 'Plan as a file for someone'),
  ]);
  path = (await file.path())!;
  const written = readFileSync(path, 'utf8');
  expect(JSON.parse(written)).toMatchObject({
    strandline: 'wash-day-plan',
    version: 1,
    name: 'Sunday class',
  });
  for (const own of ['Robin', 'secret', 'http', robin.id]) expect(written).not.toContain(own);
});

it('is opened by somebody else, fitted to that hair, kept and taken back', async () => {
  await to.getByText('Open a plan from someone').click();
  await to.getByLabel('Plan file').setInputFiles({
    name: 'x.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"strandline":"wash-day-plan","version":1,"steps":[[[['),
  });
  await until(
    () => to.locator('main, body').first().textContent(),
    (words) => /This file cannot be read; it may be cut off\./.test(words ?? ''),
  );
  await to.getByLabel('Plan file').setInputFiles(path);
  const shown = await until(
    () => to.locator('.offer').first().textContent(),
    (words) => /For Wren: /.test(words ?? ''),
  );
  expect(shown).toContain('Squeeze, do not rub.');
  expect(shown).toContain(`It brings ${chosen.length} products you do not have`);
  expect(await kept(student)).toMatchObject({ products: [], routines: [] });
  await until(
    () => to.locator('.offer').first().textContent(),
    (words) => /For this hair \(Wren\), change:/.test(words ?? ''),
  );
  await screens(to, 'plan-from-someone', true);
  await press(to, 'Keep it as it is');
  const { products, routines } = await until(
    () => kept(student),
    (now) => now.routines.length > 0,
  );
  expect(products.map(({ owned, notes, sources }) => [owned, notes, sources])).toEqual(
    chosen.map(() => [false, '', []]),
  );
  expect(routines).toMatchObject([{ head: wren.id, name: 'Sunday class', note: 'Squeeze, do not rub.' }]);
  await press(to, 'Undo');
  await until(
    () => kept(student),
    (now) => now.routines.length + now.products.length === 0,
  );
});

it('is copied for another person, whose answers nobody asked for yet', async () => {
  await teacher.change([{ do: 'put', thing: 'heads', value: { ...wren, added: today } }]);
  await from.getByText('Copy to another person').click();
  await from.getByLabel('For whom').selectOption('wren');
  await until(
    () => from.locator('body').textContent(),
    (words) => /For Wren: /.test(words ?? ''),
  );
  await press(from, 'Keep it as it is');
  const now = await until(
    () => kept(teacher),
    ({ routines }) => routines.length === 2,
  );
  expect(now.routines.map(({ head }) => head).toSorted()).toEqual(['robin', 'wren']);
  expect(now.settings).toMatchObject({ headInUse: robin.id, routineInUse: 'day' });
});
