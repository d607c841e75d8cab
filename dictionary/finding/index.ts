/** What the finder of lists knows beside the names: what `createFinder` takes. */
import patternWords from '../pattern-words.json' with { type: 'json' };
import around from './around.json' with { type: 'json' };
import denials from './denials.json' with { type: 'json' };
import headings from './headings.json' with { type: 'json' };
import goods from './other-goods.json' with { type: 'json' };
import own from './own-names.json' with { type: 'json' };
import prose from './prose.json' with { type: 'json' };
import shared from './shared-names.json' with { type: 'json' };

export const findingFacts = {
  around,
  denials,
  goods,
  headings,
  own,
  prose,
  shared,
  genera: patternWords.genus,
};
