import patternWords from '../pattern-words.json' with { type: 'json' };
import around from './around.json' with { type: 'json' };
import denials from './denials.json' with { type: 'json' };
import headings from './headings.json' with { type: 'json' };
import label from './label.json' with { type: 'json' };
import goods from './other-goods.json' with { type: 'json' };
import own from './own-names.json' with { type: 'json' };
import prose from './prose.json' with { type: 'json' };
import remarks from './remarks.json' with { type: 'json' };
import shared from './shared-names.json' with { type: 'json' };

/** What the finder of lists knows beside the names: what `createFinder` takes. */
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

const both = (...groups: { words: string[] }[]) => ({ words: groups.flatMap(({ words }) => words) });

/** What the reading of labels knows beside the names: its own words, and those by which pages are read too. */
export const labelWords = {
  ...remarks,
  ...label,
  headings: both(...headings.words, label.heads),
  full: headings.full,
  key: both(headings.teasers, label.key),
  active: both({ words: headings.teasers.actives }, label.active),
  leftOut: both(denials.before, denials.alone, label.leftOut),
  glued: both(denials.glued, label.friendly),
  may: both(prose.goesOn, label.may),
  traces: both(prose.endsOn, label.traces),
};
