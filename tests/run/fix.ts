// `npm run fix`: mends what can be mended — lint, format, order and layout of dictionary files.
import { rewriteDictionary } from './dictionary-files.ts';
import { run } from './steps.ts';

const biome = run('biome', ['check', '--config-path=.biome.json', '--write', '.']);
const rewritten = rewriteDictionary();
console.log(
  rewritten.length
    ? `Dictionary files rewritten: ${rewritten.join(', ')}`
    : 'Dictionary files: nothing to rewrite',
);
process.exitCode = biome.status ?? 1;
