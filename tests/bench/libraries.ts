// Well-known libraries that look through a page as ours does, to be timed beside it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../run/steps.ts';

const code = (path: string) => readFileSync(join(root, 'node_modules', path), 'utf8');

/** Name, script that brings it, what is timed. */
export const libraries = [
  [
    'Readability',
    `${code('@mozilla/readability/Readability.js')};self.Readability = Readability`,
    'new Readability(document.cloneNode(true)).parse()',
  ],
  [
    'mark.js',
    code('mark.js/dist/mark.js'),
    "await new Promise((done) => new Mark(document.body).mark('Glycerin', { done }))",
  ],
  ['axe-core', code('axe-core/axe.min.js'), 'await axe.run()'],
] as const;
