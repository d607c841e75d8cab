// How pages are read that were written before the finder was looked at. Kinds of the half kept aside are only counted,
// never printed one by one.
import { Window } from 'happy-dom';
import * as apart from '../page/apart/make.ts';
import * as later from '../page/later/make.ts';
import * as noisy from '../page/noisy/make.ts';
import * as other from '../page/other/make.ts';
import { type Score, scoredPage } from '../page/other/score.ts';

const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

/** Prints found, whole and silent of both halves; kinds of the seen half one by one, with `--bad` their misses. */
export function printOtherCoverage(
  { drawnPages, silentPages }: Pick<typeof other, 'drawnPages' | 'silentPages'> = other,
  name = 'other shops',
  count = Number(process.env.PAGES ?? 40),
): void {
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const doc = document as unknown as Document;
  const only = process.env.SHAPE;
  const bad = process.argv.includes('--bad');
  for (const half of ['seen', 'kept'] as const) {
    if ((process.env.HALF ?? half) !== half) continue;
    const pages = drawnPages(half, count).filter(({ kind }) => !only || kind === only);
    const rows = pages.map((page) => ({ ...page, ...scoredPage(doc, page) }));
    const quiet = silentPages(half, count * 2).filter(({ kind }) => !only || kind === only);
    const shown = quiet
      .map((page) => ({ ...page, ...scoredPage(doc, page) }))
      .filter(({ texts }) => texts.length > 0);
    const of = (kind: keyof Score) => percent(rows.filter((row) => row[kind]).length, rows.length);
    if (half === 'seen') {
      for (const kind of new Set(rows.map((row) => row.kind))) {
        const these = rows.filter((row) => row.kind === kind);
        const found = these.filter((row) => row.found).length;
        const whole = these.filter((row) => row.whole).length;
        console.log(
          `  ${kind}: found ${percent(found, these.length)}, whole ${percent(whole, these.length)}`,
        );
        if (bad)
          for (const row of these.filter((each) => !each.whole).slice(0, 5))
            console.log(
              `    ${row.tongue} ${row.html}\n    want ${JSON.stringify(row.lists)}\n    ⇒ ${JSON.stringify(row.texts)}`,
            );
      }
      for (const kind of new Set(shown.map((row) => row.kind))) {
        const these = shown.filter((row) => row.kind === kind);
        console.log(`  ${kind}: ${these.length} of ${count * 2} show something`);
        if (bad)
          for (const row of these.slice(0, 5))
            console.log(`    ${row.tongue} ${row.html}\n    ⇒ ${JSON.stringify(row.texts)}`);
      }
    }
    if (rows.length + quiet.length > 0)
      console.log(
        `${name}, ${half} half: found ${of('found')}, whole and right ${of('whole')} of ${rows.length}; ${shown.length} of ${quiet.length} silent pages show something`,
      );
  }
}

/** The set in languages and shapes that no other draws. */
export const printLaterCoverage = (): void => printOtherCoverage(later, 'later shops');

/** The third set, written before anything of the finder was opened. */
export const printApartCoverage = (): void => printOtherCoverage(apart, 'shops apart');

/** The fourth: forms, slots, leftovers of other systems, in shops full of noise. */
export const printNoisyCoverage = (): void => printOtherCoverage(noisy, 'noisy shops');

if (import.meta.main) {
  printOtherCoverage();
  printLaterCoverage();
  printApartCoverage();
  printNoisyCoverage();
}
