// How lists drawn in sixteen shapes of real shops are found, names from the whole inventory. The second set differs in
// wording, names and seeds and is only ever counted: nothing is tuned by it, so its pages are not printed.
import { Window } from 'happy-dom';
import { drawn, shapeNames } from '../page/shapes/make.ts';
import { hasPrintedNames } from '../page/shapes/names.ts';
import { scored } from '../page/shapes/score.ts';
import { silentDrawn, silentShapeNames } from '../page/shapes/silent.ts';

const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

/** Prints found and whole, shape by shape for the set that is looked at, in sum for the one that is not. */
export function printShapeCoverage(count = 40): void {
  if (!hasPrintedNames)
    console.log('names of the public inventory: skipped, not here; the dictionary’s own instead');
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const doc = document as unknown as Document;
  const only = process.env.SHAPE;
  for (const set of ['seen', 'unseen'] as const) {
    const sum = { pages: 0, found: 0, whole: 0 };
    for (const shape of shapeNames) {
      if (only && shape !== only) continue;
      const rows = drawn(shape, count, set).map((each) => ({
        ...each,
        ...scored(doc, each.body, each.wanted, each.also),
      }));
      const [found, whole] = [rows.filter((row) => row.found).length, rows.filter((row) => row.whole).length];
      sum.pages += count;
      sum.found += found;
      sum.whole += whole;
      if (set === 'seen' || process.argv.includes('--unseen-shapes'))
        console.log(`  ${shape}: found ${percent(found, count)}, whole ${percent(whole, count)}`);
      if (set === 'seen' && process.argv.includes('--bad'))
        for (const row of rows.filter((each) => !each.whole).slice(0, 6))
          console.log(
            `    ${row.body.replace(/^[\s\S]*?<\/h1>/, '').slice(0, 900)}\n    ⇒ ${JSON.stringify(row.texts)}`,
          );
    }
    console.log(
      `${set} shapes: found ${percent(sum.found, sum.pages)}, whole and right ${percent(sum.whole, sum.pages)} of ${sum.pages}`,
    );
    if (only && !silentShapeNames.includes(only)) continue;
    const silent = { pages: 0, shown: 0 };
    for (const shape of silentShapeNames) {
      const shown = silentDrawn(shape, count * 3, set).flatMap((body) => {
        const { texts } = scored(doc, body, []);
        return texts.length > 0 ? [{ body, texts }] : [];
      });
      silent.pages += count * 3;
      silent.shown += shown.length;
      if (shown.length > 0 && (set === 'seen' || process.argv.includes('--unseen-shapes')))
        console.log(`  ${shape}: ${shown.length} of ${count * 3} show something`);
      if (set === 'seen' && process.argv.includes('--bad'))
        for (const { texts } of shown.slice(0, 8)) console.log(`    ⇒ ${JSON.stringify(texts)}`);
    }
    console.log(`${set} silent pages: ${silent.shown} of ${silent.pages} show something`);
  }
}

if (import.meta.main) printShapeCoverage();
