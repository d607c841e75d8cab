import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { productKinds } from '../../src/core/product/product.ts';
import { expected, expectedElsewhere } from './expected.ts';
import { goods } from './goods.ts';
import { type Store, serveStore } from './serve.ts';
import { silentPages } from './silent.ts';
import { structureNames } from './structures/index.ts';

let store: Store;
beforeAll(async () => {
  store = await serveStore();
});
afterAll(() => store.close());
const get = (path: string) => fetch(store.url + path);

describe('the invented shop', () => {
  it('has every kind of step, at least 24 goods, and a page for each structure', () => {
    expect(goods.length).toBeGreaterThanOrEqual(24);
    const notSold = ['rinse', 'scalp-treatment', 'serum', 'hairspray', 'dry-shampoo'];
    expect([...new Set(goods.map((good) => good.kind))].sort()).toEqual(
      productKinds.filter((kind) => !notSold.includes(kind)).sort(),
    );
    expect([...new Set(goods.map((good) => good.structure))].sort()).toEqual([...structureNames].sort());
  });

  it.each(goods)('$id: a list of 8 to 45 names with the proteins set down for it', (good) => {
    const names = good.list.split(/, (?![^(]*\))/);
    expect(names.length).toBeGreaterThanOrEqual(8);
    expect(names.length).toBeLessThanOrEqual(45);
    let at = 0;
    for (const [printed] of expected[good.id]!) {
      at = good.list.indexOf(printed, at);
      expect(at, printed).toBeGreaterThanOrEqual(0);
    }
    const other = good.variant?.list ?? good.alsoInBox?.list ?? '';
    for (const [printed] of expectedElsewhere[good.id] ?? []) expect(other).toContain(printed);
  });

  it('expects something of every good, and of nothing else', () => {
    expect(Object.keys(expected).sort()).toEqual(goods.map((good) => good.id).sort());
  });

  it.each(['/', '/shelf', ...Object.keys(silentPages)])(
    '%s says that the goods are invented',
    async (path) => {
      const answer = await get(path);
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain('is made up');
    },
  );

  it('serves every good in every structure and hostile style, and its picture', async () => {
    for (const good of goods) expect((await get(`/pictures/${good.id}.svg`)).status).toBe(200);
    for (const structure of structureNames) {
      const answer = await get(`/goods/${goods[0]!.id}?as=${structure}&hostile=1`);
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain('/hostile/unset.css');
    }
    for (const style of ['unset', 'transform', 'above', 'rtl', 'zoom', 'dark'])
      expect((await get(`/hostile/${style}.css`)).status).toBe(200);
  });

  it('sends a strict policy with some pages, and 404 for what it does not have', async () => {
    expect((await get('/goods/slipway-prewash-oil')).headers.get('content-security-policy')).toContain(
      "default-src 'none'",
    );
    expect((await get('/goods/nothing')).status).toBe(404);
    expect((await get('/hostile/..%2f..%2fgoods.ts')).status).toBe(404);
  });
});
