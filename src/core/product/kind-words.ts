import { unmarked } from '../names/normal-form.ts';
import { phraseFinder } from '../names/phrases.ts';
import type { ProductKind } from './product.ts';

/** dictionary/kinds.json: the words by which shops name what they sell, in some twenty languages. */
export type KindWords = {
  /**
   * Nouns for a form. A step (shampoo, mask) decides over a texture (gel, oil), and that over a carrier (spray,
   * treatment). `first`: words of languages that put the noun before what describes it.
   */
  nouns: { kind: ProductKind | 'spray'; tier: Tier; last?: string[]; first?: string[] }[];
  marks: Record<NounMark, string[]>;
  goods: Record<'kit' | 'notKit' | 'never' | 'process' | 'swallowed' | 'elsewhere' | 'hair', string[]> & {
    accessory: { last: string[]; first: string[] };
  };
  /** Words after which the title says for whom, or with what. */
  breaks: string[];
  /** Words of languages that put the noun first. */
  headFirst: string[];
  sources: string[];
};

export type Tier = 'step' | 'texture' | 'carrier';

/** What stands beside a noun and changes what it is. */
export type NounMark =
  | 'dryShampoo'
  | 'leaveIn'
  | 'preWash'
  | 'cleansing'
  | 'scalp'
  | 'rinsedScalp'
  | 'refresh'
  | 'hold'
  | 'glaze'
  | 'afterwards'
  | 'conditions'
  | 'treatmentOfBond'
  | 'treatmentOfProtein';

export type Noun = {
  kind: ProductKind | 'spray' | 'accessory';
  tier: Tier;
  first: boolean;
  at: number;
  to: number;
};

export type KindFinder = {
  /** The parts of a title between commas, brackets and words such as "for". */
  parts(text: string): string[];
  nouns(part: string): Noun[];
  has(mark: NounMark, text: string): boolean;
  names(goods: Exclude<keyof KindWords['goods'], 'accessory'>, text: string): boolean;
  headFirst(text: string): boolean;
  fold(text: string): string;
};

/** The words as expressions, built when first asked. */
export function createKindFinder(words: KindWords): KindFinder {
  const built = new Map<string, RegExp>();
  const finder = (id: string, phrases: readonly string[], flags = '') => {
    const known = built.get(id) ?? phraseFinder(phrases, foldTitle, flags);
    built.set(id, known);
    return known;
  };
  const accessory = { kind: 'accessory' as const, tier: 'step' as const, ...words.goods.accessory };
  const sorts = [...words.nouns, accessory].flatMap(({ kind, tier, last = [], first = [] }, index) =>
    [
      { kind, tier, first: false, phrases: last, id: `noun ${index} last` },
      { kind, tier, first: true, phrases: first, id: `noun ${index} first` },
    ].filter(({ phrases }) => phrases.length > 0),
  );
  return {
    fold: foldTitle,
    parts: (text) =>
      foldTitle(text)
        // "Pre-shampoo" says when, and names no shampoo.
        .replace(finder('when', words.marks.preWash, 'g'), ' ')
        .replace(finder('breaks', words.breaks, 'g'), ' |')
        .split(/\|/)
        .map((part) => ` ${part.trim()} `)
        .filter((part) => part.trim() !== ''),
    nouns: (part) =>
      sorts.flatMap(({ kind, tier, first, phrases, id }) =>
        [...part.matchAll(finder(id, phrases, 'g'))].map((match) => ({
          kind,
          tier,
          first,
          at: match.index,
          to: match.index + match[0].length,
        })),
      ),
    has: (mark, text) => finder(mark, words.marks[mark]).test(text),
    names: (goods, text) => finder(`goods ${goods}`, words.goods[goods]).test(text),
    headFirst: (text) => finder('head first', words.headFirst).test(text),
  };
}

/** One spelling for comparing titles: lower case without marks, words apart by one space, one sign between parts. */
function foldTitle(text: string): string {
  const plain = text
    .slice(0, longestTitle)
    .toLowerCase()
    .replace(/(\d)[.,](\d)/g, '$1$2')
    .replace(/\s[-–—]+\s|[,:;|()[\]{}–—•·/!?»›>]+|\.(?=\s|$)/g, ' | ')
    .replace(/\s*[+&]\s*/g, ' & ')
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[ßæœøłđı]/g, (letter) => unmarked[letter]!)
    .replace(/[^\p{L}\p{N}|&]+/gu, ' ')
    .trim();
  return ` ${plain} `;
}

const longestTitle = 400; // letters
