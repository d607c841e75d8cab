// How well lists are found on the corpus of pages. Called by `npm run coverage`; also runs by itself.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Window } from 'happy-dom';
import { findLists } from '../../src/page/find-lists.ts';
import { gate } from '../../src/page/read/gate.ts';
import type { Expected } from '../page/make-pages.ts';
import { openPage, plain } from '../page/open-page.ts';
import { barely, cosmeticPages, shapeNames, silentPages, silentPools } from '../page/random-lists.ts';
import { tricky } from '../page/tricky.ts';
import { root } from './steps.ts';

type Page = { id: string; html: string; wanted: string[] };

function corpus(): Page[] {
  const dir = join(root, 'tests', 'page', 'pages');
  const made = readdirSync(dir).map((id) => {
    const { lists } = JSON.parse(readFileSync(join(dir, id, 'expected.json'), 'utf8')) as Expected;
    return {
      id,
      html: readFileSync(join(dir, id, 'page.html'), 'utf8'),
      wanted: lists.map(({ text }) => plain(text)),
    };
  });
  const byHand = tricky.map(([id, body, lists]) => ({
    id,
    html: `<head></head><body>${body}</body>`,
    wanted: lists.map((list) => plain(Array.isArray(list) ? list[0] : list)),
  }));
  return [...made, ...byHand];
}

const letters = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** Prints recall (lists found at all), precision (lists found that are lists) and boundaries (letter for letter). */
export function printPageCoverage(): void {
  const sum = { pages: 0, silent: 0, shown: 0, wanted: 0, met: 0, exact: 0, found: 0, read: 0, withList: 0 };
  for (const { id, html, wanted } of corpus()) {
    const window = new Window({ settings: { disableJavaScriptEvaluation: true } });
    const document = window.document as unknown as Document;
    openPage(document, html);
    const found = gate(document) ? findLists(document).map(({ text }) => plain(text)) : [];
    sum.pages++;
    sum.found += found.length;
    if (wanted.length === 0) {
      sum.silent++;
      if (found.length > 0) sum.shown++;
    } else {
      sum.withList++;
      if (JSON.stringify(found) === JSON.stringify(wanted)) sum.read++;
    }
    for (const list of wanted) {
      const key = letters(list);
      sum.wanted++;
      if (found.includes(list)) sum.exact++;
      if (found.some((one) => letters(one).includes(key.slice(0, 40)) || key.includes(letters(one))))
        sum.met++;
    }
    if (JSON.stringify(found) !== JSON.stringify(wanted)) console.log(`  not as expected: ${id}`);
    void window.happyDOM.abort();
  }
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} % (${part} of ${of})`;
  console.log(`pages: ${sum.pages}, of them ${sum.silent} without a list`);
  console.log(`pages with a list read with the right boundaries: ${percent(sum.read, sum.withList)}`);
  console.log(`recall, lists found: ${percent(sum.met, sum.wanted)}`);
  console.log(`precision, found texts that are lists: ${percent(sum.met, sum.found)}`);
  console.log(`boundaries, found letter for letter: ${percent(sum.exact, sum.wanted)}`);
  console.log(`pages without a list that show something: ${percent(sum.shown, sum.silent)}`);
}

/** Prints how lists drawn at random fare, in every shape. */
export function printRandomCoverage(count = 300): void {
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const found = (body: string) => {
    document.body.innerHTML = body;
    return findLists(document as unknown as Document).map(({ text }) => barely(text));
  };
  const pages = shapeNames.flatMap((shape) => cosmeticPages(shape, count));
  const exact = pages.filter(({ body, wanted }) => found(body).join(' | ') === wanted).length;
  const silent = shapeNames.flatMap((shape) =>
    silentPools.flatMap((pool) => silentPages(pool, shape, count)),
  );
  const shown = silent.filter((body) => found(body).length > 0).length;
  console.log(`lists drawn at random: ${exact} of ${pages.length} cosmetic ones read letter for letter`);
  console.log(`  ${shown} of ${silent.length} of ${silentPools.join(', ')} show something`);
}

if (import.meta.main) {
  printPageCoverage();
  printRandomCoverage();
}
