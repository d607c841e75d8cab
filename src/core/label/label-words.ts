const groups = [
  // what stands among names and is none: dictionary/finding/remarks.json
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
  'leads',
  // how a label is taken apart: dictionary/finding/label.json, with what headings, denials and prose hold
  'headings',
  'full',
  'lists',
  'ofList',
  'active',
  'inactive',
  'key',
  'notes',
  'may',
  'mayAround',
  'traces',
  'contain',
  'allergens',
  'holding',
  'leftOut',
  'notSo',
  'below',
  'orLess',
  'and',
  'andOnce',
  'or',
  'of',
  'parts',
  'fill',
  'pure',
  'codes',
  'coded',
  'counted',
  'seeFor',
  'stated',
  'drugs',
  'glued',
] as const;

type Words = { words: readonly string[] };

/** The words that labels are read by; the files of `dictionary/finding/` say what each group is. */
export type LabelWords = Record<(typeof groups)[number], Words>;

/** No word at all: names alone are read. */
export const noWords = Object.fromEntries(
  groups.map((group) => [group, { words: [] }]),
) as unknown as LabelWords;

/**
 * Words as the source of one expression, the longest first. A star stands for any letters there, "…" for some
 * letters between; an apostrophe, and a full stop with its space, may be missing.
 */
export function anyOf(...lists: Words[]): string {
  const words = [...new Set(lists.flatMap((list) => list.words))].sort((a, b) => b.length - a.length);
  return words.length > 0 ? `(?:${words.map(sourceOf).join('|')})` : '(?!)';
}

const escapedAs: Record<string, string> = {
  '*': '\\p{L}*',
  '…': '.{0,40}?',
  "'": "['’]?",
  '.': '\\.?\\s?',
};

const sourceOf = (word: string) =>
  word.replace(/[*…'.+?^${}()|[\]\\/]/g, (sign) => escapedAs[sign] ?? `\\${sign}`);
