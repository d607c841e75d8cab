import { entries, findingFacts } from '../../../dictionary/index.ts';
import { keysOf } from '../../../src/core/names/lookup.ts';
import { vocabularyOf } from '../../../src/find/finder.ts';

/** What lookup and finder would else work out of the dictionary each time the worker wakes: lines of one text each. */
export const writeAhead = () => ({
  keys: keysOf(entries).join('\n'),
  vocabulary: [...vocabularyOf(entries, findingFacts)].join('\n'),
});
