// @vitest-environment happy-dom
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { scoredIn } from './other/score.ts';
import { changesOf } from './real/changes.ts';
import { type Host, hostOf, kindNames, putList } from './real/make.ts';
import { silentNames, tempt } from './real/silent.ts';
import { savedPages } from './real/stated.ts';

// The pages themselves are no part of the project (`node tests/run/coverage-real.ts --fetch`); this one is invented and
// built like them, so that what puts lists into them is held here too.
const dir = mkdtempSync(join(tmpdir(), 'strandline-real-'));
afterAll(() => rmSync(dir, { recursive: true }));

writeFileSync(
  join(dir, 'test_invented.py'),
  `class TestInvented(ScraperTest):

    scraper_class = Invented

    def test_title(self):
        return self.assertEqual("Dune Soup", self.harvester_class.title())

    def test_ingredients(self):
        self.assertEqual(
            ["2 cups\\u00a0samphire", '1 onion ("small")', "100 g barley", "a pinch of " "salt", "½ lemon"],
            self.harvester_class.ingredients(),
        )

    def test_instructions(self):
        self.assertEqual("Wash the samphire.\\nBoil all of it.", self.harvester_class.instructions())
`,
);
const item = (amount: string, what: string) =>
  `<li><span class="amount">${amount}</span> <span class="what">${what}</span></li>`;
writeFileSync(
  join(dir, 'invented.testhtml'),
  `<html lang="en"><head><title>Dune Soup - Gull and Ladle</title><script type="application/ld+json">{"@type":"Recipe"}</script></head>
<body><div class="crumbs breadcrumbs"><a href="/soups">Soups</a></div><h1>Dune Soup</h1><p>It was a cold day by the sea when we first made it, and we have made it again each winter since.</p>
<h2>Ingredients</h2><div class="box"><ul>${item('2 cups', 'samphire')}${item('1', '<a href="/onion">onion</a> ("small")')}${item('100 g', 'barley')}</ul><h4>To finish</h4><ul>${item('a pinch of', 'salt')}${item('½', 'lemon')}</ul></div>
<h2>Method</h2><ol><li>Wash the samphire.</li><li>Boil all of it.</li></ol></body></html>`,
);

const open = (): Host => {
  const [saved] = savedPages(dir);
  return hostOf(new DOMParser().parseFromString(readFileSync(saved!.file, 'utf8'), 'text/html'), saved!);
};

describe('a page of strangers', () => {
  it('is known by what is stated of it', () => {
    const host = open();
    expect(host.ingredients).toEqual([
      '2 cups\u00a0samphire',
      '1 onion ("small")',
      '100 g barley',
      'a pinch of salt',
      '½ lemon',
    ]);
    expect(host.title).toBe('Dune Soup');
    expect(host.steps).toEqual(['Wash the samphire.', 'Boil all of it.']);
    expect(host.printings.map(({ items }) => items.map((item) => item.nodeName))).toEqual([
      ['LI', 'LI', 'LI', 'LI', 'LI'],
    ]);
  });

  it.each(kindNames)('holds a list, %s, and is then as it was', (kind) => {
    const host = open();
    const before = host.document.documentElement.outerHTML;
    const changes = changesOf(host.document);
    const names = putList(kind, host, changes)!;
    expect(names.length).toBeGreaterThan(4);
    for (const name of names) expect(host.document.body.textContent).toContain(name);
    expect(host.document.body.textContent).not.toMatch(/barley/);
    changes.undo();
    expect(host.document.documentElement.outerHTML).toBe(before);
  });

  it.each(silentNames)('shows nothing, %s', (kind) => {
    const host = open();
    expect(tempt(kind, host, changesOf(host.document))).toBe(true);
    expect(scoredIn(host.document, { lists: [] }).texts).toEqual([]);
  });
});
