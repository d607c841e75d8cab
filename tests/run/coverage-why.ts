// `npm run coverage -- --why FILE`: every run of names on a saved page with what speaks for and against its being a list.
import { readFileSync } from 'node:fs';
import { Window } from 'happy-dom';
import { explain } from '../../src/page/find-lists.ts';
import { openPage } from '../page/open-page.ts';

/** Prints the evidence of a page; without a whole document in it, the file is taken for a page's body. */
export function printWhy(file: string): void {
  const html = readFileSync(file, 'utf8');
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const whole = /<body/.test(html) ? html : `<body>${html}</body>`;
  openPage(document as unknown as Document, /<head>/.test(whole) ? whole : `<head></head>${whole}`);
  const { open, runs } = explain(document as unknown as Document);
  if (!open) console.log('the gate is closed: no two stems of names stand close together');
  for (const { letters, kinds, judged } of runs) {
    console.log(
      `${judged.isList ? 'a list' : 'no list'}, ${judged.points.toFixed(2)} points${judged.not ? `, but ${judged.not}` : ''}: ${letters.replace(/\s+/g, ' ').slice(0, 240)}`,
    );
    for (const { what, count, points } of judged.evidence)
      console.log(
        `  ${points >= 0 ? '+' : ''}${points.toFixed(2).padStart(5)}  ${what}${count > 1 ? ` × ${count}` : ''}`,
      );
    console.log(`  ${kinds}`);
  }
}
