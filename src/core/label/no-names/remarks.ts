import { headings } from '../headings.ts';
import { type LabelWords, noWords } from '../label-words.ts';
import { besideNames } from './beside-names.ts';
import { legends } from './legends.ts';
import { noNames } from './no-names.ts';
import { noise } from './noise.ts';
import { proseTest } from './prose.ts';
import { statements } from './statements.ts';

/** What tells names from headings, sentences, legends, claims, codes and remarks. */
export type Remarks = ReturnType<typeof createRemarks>;

export function createRemarks(known: Partial<LabelWords> = {}) {
  const words = { ...noWords, ...known };
  const heads = headings(words);
  const states = statements(words);
  return {
    isProse: proseTest(words),
    isLegend: legends(words),
    ...noNames(words, states.opensStatement),
    ...heads,
    ...states,
    ...noise(words, heads.saysNoList),
    ...besideNames(words),
  };
}
