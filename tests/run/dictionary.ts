// `npm run dictionary -- [text or file …]`: lists what is unread, checks the dictionary, writes its files.
import { existsSync, readFileSync } from 'node:fs';
import { limits } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { rewriteDictionary } from './dictionary-files.ts';
import { type Dictionary, problemsOf, readDictionary } from './dictionary-problems.ts';
import { unreadIn } from './unread.ts';

const given = process.argv.slice(2);
const rewritten = rewriteDictionary();
if (rewritten.length) console.log(`Sorted and written: ${rewritten.join(', ')}`);

const dictionary: Dictionary = readDictionary();
const problems = problemsOf(dictionary);
for (const problem of problems) console.log(problem);
const entries = Object.values(dictionary.families).flat();
const aliases = entries.reduce((sum, entry) => sum + (entry.aliases?.length ?? 0), 0);
console.log(
  `${entries.length} entries, ${aliases} aliases, ${dictionary.patterns.length} patterns, ${limits.limits.length} ceilings: ` +
    (problems.length ? `${problems.length} problems` : 'no problems'),
);

if (given.length) {
  const lookup = createLookup(entries, dictionary.patterns, dictionary.limits);
  const text = given.map((each) => (existsSync(each) ? readFileSync(each, 'utf8') : each)).join('\n');
  const { unread, mentions } = unreadIn(text, lookup);
  for (const { name, times, close } of unread)
    console.log(
      `${String(times).padStart(5)} × ${name}${close.length ? `   (near: ${close.join(', ')})` : ''}`,
    );
  console.log(`${unread.length} names unread in ${mentions} mentions`);
} else {
  console.log('Give a text or a file to list what is unread in it: npm run dictionary -- labels.txt');
}
process.exitCode = problems.length ? 1 : 0;
