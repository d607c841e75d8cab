// How lists of shops in eleven languages are found. Six of the languages are only ever counted.
import { Window } from 'happy-dom';
import { drawn, shapeNames } from '../page/fresh/make.ts';
import { silentDrawn, silentNames } from '../page/fresh/silent.ts';
import { scored } from '../page/shapes/score.ts';

const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

/** Prints found and whole, shape by shape, and silent pages that show something. */
export function printFreshCoverage(count = 60): void {
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const doc = document as unknown as Document;
  const only = process.env.SHAPE;
  const bad = process.argv.includes('--bad');
  for (const set of ['seen', 'counted'] as const) {
    const sum = { pages: 0, found: 0, whole: 0, silent: 0, shown: 0 };
    for (const shape of shapeNames) {
      if (only && shape !== only) continue;
      const rows = drawn(shape, count, set).map((row) => ({
        ...row,
        ...scored(doc, row.body, row.wanted, row.also),
      }));
      const [found, whole] = [rows.filter((row) => row.found).length, rows.filter((row) => row.whole).length];
      sum.pages += count;
      sum.found += found;
      sum.whole += whole;
      console.log(`  ${set} · ${shape}: found ${percent(found, count)}, whole ${percent(whole, count)}`);
      if (bad && set === 'seen')
        for (const row of rows.filter((each) => !each.whole).slice(0, 5))
          console.log(
            `    ${row.tongue} ${row.body.replace(/^[\s\S]*?<\/h1>/, '').slice(0, 900)}\n    ⇒ ${JSON.stringify(row.texts)}`,
          );
    }
    for (const shape of silentNames) {
      if (only && shape !== only) continue;
      const shown = silentDrawn(shape, count * 2, set).flatMap(({ body, tongue }) => {
        const { texts } = scored(doc, body, []);
        return texts.length > 0 ? [{ tongue, texts, body }] : [];
      });
      sum.silent += count * 2;
      sum.shown += shown.length;
      if (shown.length > 0)
        console.log(`  ${set} · ${shape}: ${shown.length} of ${count * 2} show something`);
      if (bad && set === 'seen')
        for (const { tongue, texts } of shown.slice(0, 5))
          console.log(`    ${tongue} ⇒ ${JSON.stringify(texts)}`);
    }
    console.log(
      `${set} languages: found ${percent(sum.found, sum.pages)}, whole ${percent(sum.whole, sum.pages)} of ${sum.pages}; ${sum.shown} of ${sum.silent} silent pages show something`,
    );
  }
}

if (import.meta.main) printFreshCoverage();
