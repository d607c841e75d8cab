// Pages that would hold us, and so the page, up. Invented.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { label } from './bare-pages.ts';

const page = (body: string) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Heavy</title></head><body><h1>Heavy</h1>${body}</body></html>`;
const list = `<section><h3>Ingredients</h3><p class="list">${label}</p></section>`;
const many = (n: number, made: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => made(i)).join('');

/** What is read on each (`4` proteins of the one list), or `any` where all that counts is that nothing hangs. */
export const heavyPages: Record<string, [body: string, badge: '4' | 'any']> = {
  'json-ld 30,000 deep': [
    `${list}<script type="application/ld+json">${'{"@graph":['.repeat(30_000)}${']}'.repeat(30_000)}</script>`,
    '4',
  ],
  'a list of 2 MB': [`<h3>Ingredients</h3><p>${many(100_000, (i) => `Sodium Laurate ${i}, `)}</p>`, 'any'],
  'a list of 2 MB of known names': [`<h3>Ingredients</h3><p>${many(6000, () => `${label}, `)}</p>`, 'any'],
  '10,000 lists': [many(10_000, (i) => `<h3>Ingredients</h3><p>${label}, Sample${i}</p>`), 'any'],
  '200,000 nodes': [`${many(100_000, () => '<i>x</i> ')}${list}`, '4'],
  '1 MB of text': [
    `${many(20_000, () => '<p>A word of plain text about glycerin and sodium here.</p>')}${list}`,
    'any',
  ],
  '1 MB of plain text': [
    `${many(20_000, () => '<p>Opening hours and how one may find us in town.</p>')}${list}`,
    '4',
  ],
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

/** Serves each at the path of its name. */
export async function serveHeavy() {
  const server = createServer(({ url = '/' }, answer) => {
    answer.setHeader('content-type', 'text/html; charset=utf-8');
    answer.end(page(heavyPages[decodeURIComponent(url.slice(1))]?.[0] ?? ''));
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  return {
    url: (name: string) =>
      `http://localhost:${(server.address() as AddressInfo).port}/${encodeURIComponent(name)}`,
    close: () => new Promise((closed) => server.close(closed)),
  };
}
