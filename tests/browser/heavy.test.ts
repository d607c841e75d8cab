// Pages that would hold us, and so the page, up: bounded, silent or read, and the page stays answerable.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { label } from './bare-pages.ts';
import { type Harness, openShop, until } from './harness.ts';

const page = (body: string, head = '') =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Heavy</title>${head}</head><body><h1>Heavy</h1>${body}</body></html>`;
const list = `<section><h3>Ingredients</h3><p class="list">${label}</p></section>`;
const many = (n: number, made: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => made(i)).join('');

/** What is read on each (`4` proteins of the one list), or `any` where all that counts is that nothing hangs. */
const pages: Record<string, [body: string, badge: '4' | 'any']> = {
  'json-ld 30,000 deep': [
    `${list}<script type="application/ld+json">${'{"@graph":['.repeat(30_000)}${']}'.repeat(30_000)}</script>`,
    '4',
  ],
  'a list of 2 MB': [`<h3>Ingredients</h3><p>${many(100_000, (i) => `Sodium Laurate ${i}, `)}</p>`, 'any'],
  '10,000 lists': [many(10_000, (i) => `<h3>Ingredients</h3><p>${label}, Sample${i}</p>`), 'any'],
  '200,000 nodes': [`${many(100_000, () => '<i>x</i> ')}${list}`, '4'],
  '150,000 spaces': [
    `<h3>Ingredients</h3><pre>Aqua, Glycerin\n${' '.repeat(150_000)}Parfum</pre>${list}`,
    'any',
  ],
  '50 shadow roots': [
    many(
      50,
      (i) =>
        `<x-${i}><template shadowrootmode="open">${i === 25 ? list : `<p>Glycerin is a word, ${i}</p>`}</template></x-${i}>`,
    ),
    '4',
  ],
  storm: [
    `${list}<ul></ul><script>setInterval(() => { const ul = document.querySelector('ul'); for (let i = 0; i < 300; i++) { const li = document.createElement('li'); li.textContent = 'Glycerin, Aqua ' + i; ul.append(li); } while (ul.childElementCount > 3000) ul.firstChild.remove(); }, 30)</script>`,
    '4',
  ],
  cloner: [
    `${list}<script>setInterval(() => { if (document.querySelectorAll('section').length < 400) document.body.append(document.querySelector('section').cloneNode(true)) }, 10)</script>`,
    '4',
  ],
  'document.write': [
    `<script>setTimeout(() => { document.open(); document.write(${JSON.stringify(`<title>Again</title>${list}`)}); document.close(); }, 600)</script>`,
    'any',
  ],
};

let shop: Harness;
const server = createServer(({ url = '/' }, answer) => {
  answer.setHeader('content-type', 'text/html; charset=utf-8');
  answer.end(page(pages[decodeURIComponent(url.slice(1))]?.[0] ?? ''));
});
beforeAll(async () => {
  shop = await openShop();
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
});
afterAll(async () => {
  await shop.close();
  await new Promise((closed) => server.close(closed));
});

it.each(Object.entries(pages))('%s', async (name, [, badge]) => {
  const address = `http://localhost:${(server.address() as AddressInfo).port}/${encodeURIComponent(name)}`;
  const tab = await shop.context.newPage();
  await tab.goto(address);
  if (badge !== 'any') expect(await shop.badgeBecomes(tab, badge, 20_000)).toBe(badge);
  else await tab.waitForTimeout(2500);
  // Neither the page nor the background is held up: both answer, and another page is read meanwhile.
  const from = performance.now();
  expect(await tab.evaluate(() => 1 + 1)).toBe(2);
  await shop.ask('remembered', null);
  expect(performance.now() - from).toBeLessThan(3000);
  const other = await shop.open('/goods/gossamer-leave-in');
  expect(
    await until(
      () => shop.badge(other),
      (text) => text === '3',
      15_000,
    ),
  ).toBe('3');
  await other.close();
  await tab.close();
});
