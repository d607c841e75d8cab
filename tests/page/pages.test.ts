// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { findLists, rangeOf } from '../../src/page/find-lists.ts';
import { gate } from '../../src/page/read/gate.ts';
import type { Expected } from './make-pages.ts';
import { openPage, plain } from './open-page.ts';

const pages = import.meta.glob<string>('./pages/*/page.html', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const expected = import.meta.glob<Expected>('./pages/*/expected.json', {
  import: 'default',
  eager: true,
});

it('has a corpus', () => {
  expect(Object.keys(pages).length).toBeGreaterThanOrEqual(120);
  expect(Object.keys(expected).length).toBe(Object.keys(pages).length);
});

/** "same up to letter 14: …" is easier to read than two long texts. */
const firstDifference = (found: string, wanted: string) => {
  let at = 0;
  while (at < wanted.length && found[at] === wanted[at]) at++;
  return at === wanted.length && found.length === at
    ? ''
    : `differs at letter ${at}: found "…${found.slice(Math.max(0, at - 20), at + 30)}", wanted "…${wanted.slice(Math.max(0, at - 20), at + 30)}"`;
};

it.each(Object.keys(pages))('%s', (path) => {
  const { lists } = expected[path.replace('page.html', 'expected.json')]!;
  openPage(document, pages[path]!);
  const found = findLists(document);
  for (const [i, list] of found.entries())
    expect(firstDifference(plain(list.text), plain(lists[i]?.text ?? ''))).toBe('');
  expect(found.map((list) => plain(list.text))).toEqual(lists.map((list) => plain(list.text)));
  for (const [i, { product }] of lists.entries()) if (product) expect(found[i]!.product?.name).toBe(product);
  if (lists.length > 0) expect(gate(document)).toBe(true);
  for (const list of found) {
    if (list.ranges.length === 0) continue; // it stands only in the page's data
    const letters = (text: string) => text.replace(/\s/g, '');
    expect(letters(list.ranges.map((range) => range.toString()).join(''))).toBe(letters(list.text));
    expect(
      letters(
        rangeOf(list, 3, 9)
          .map((range) => range.toString())
          .join(''),
      ),
    ).toBe(letters(list.text.slice(3, 9)));
  }
});

// What shops put around a list: shelves of other goods, and their data in a script, lists and all.
const shelf = `<ul>${'<li><a href="#"><h4>Goods of the shelf</h4><p>Some words about goods with glycerin.</p></a></li>'.repeat(60)}</ul><script>let goods = { list: "${'Aqua, Glycerin, Panthenol, Parfum, Linalool, Limonene. '.repeat(120)}" };</script>`;

it.each(Object.keys(pages))('%s, within much else', (path) => {
  const { lists } = expected[path.replace('page.html', 'expected.json')]!;
  openPage(document, pages[path]!.replace(/(<body[^>]*>)([\s\S]*)(<\/body>)/, `$1${shelf}$2${shelf}$3`));
  expect(findLists(document).map((list) => plain(list.text))).toEqual(lists.map((list) => plain(list.text)));
});
