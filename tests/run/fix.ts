// `npm run fix`: mends what can be mended — lint, format, order and layout of dictionary files, arguments of messages.
import { rewriteDictionary } from './dictionary-files.ts';
import { run } from './steps.ts';
import { rewriteArguments } from './word-arguments.ts';

const biome = run('biome', ['check', '--config-path=.biome.json', '--write', '.']);
const rewritten = rewriteDictionary();
console.log(
  rewritten.length
    ? `Dictionary files rewritten: ${rewritten.join(', ')}`
    : 'Dictionary files: nothing to rewrite',
);
if (rewriteArguments()) console.log('Arguments of messages rewritten.');
process.exitCode = biome.status ?? 1;
