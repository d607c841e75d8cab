import { legends } from './legends.ts';
import { noNames } from './no-names.ts';
import { proseTest } from './prose.ts';

type Words = { words: readonly string[] };

const groups = [
  'prose',
  'small',
  'origin',
  'beside',
  'substance',
  'does',
  'grown',
  'praise',
  'goods',
  'cautions',
  'abroad',
  'sizes',
] as const;

/** Words that stand among names and name nothing: `dictionary/finding/remarks.json` says what each group is. */
export type RemarkWords = Record<(typeof groups)[number], Words>;

const none = Object.fromEntries(groups.map((group) => [group, { words: [] }])) as unknown as RemarkWords;

/** What tells names from sentences, legends, claims and remarks. */
export type Remarks = ReturnType<typeof createRemarks>;

export function createRemarks(known: Partial<RemarkWords> = {}) {
  const words = { ...none, ...known };
  return { isProse: proseTest(words.prose.words), isLegend: legends(words), ...noNames(words) };
}
