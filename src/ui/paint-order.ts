import type { Range } from '../core/entry.ts';
import type { Answer } from '../core/finding.ts';

/** Names of our own glyphs (src/ui/glyphs). */
export type GlyphName =
  | 'free'
  | 'small'
  | 'large'
  | 'bearing'
  | 'draws'
  | 'softens'
  | 'seals'
  | 'suits'
  | 'clashes'
  | 'unsure';

/** What one name on the page gets: its underline, its glyphs and its card. All words are ready to show. */
export type Mark = {
  from: number;
  to: number;
  line: 'free' | 'small' | 'large' | 'bearing' | 'moisture';
  glyphs: GlyphName[];
  card: CardWords;
};

export type CardWords = {
  title: string;
  /** How the name was found or what family it is of, in a few words: "Hydrolyzed protein, large". */
  kind: string;
  glyphs: GlyphName[];
  /** Plain sentences, in order: what it is, size and source, why, caution. */
  lines: string[];
  share: Range;
  shareWords: string;
  /** "Source: …", or empty. */
  source: string;
};

export type StripAction = 'panel' | 'compare' | 'add' | 'keep' | 'pause' | 'not-a-list';

/** The strip by a list. */
export type StripWords = {
  label: string;
  glyphs: GlyphName[];
  /** "2 proteins, both large, at most 1 % each · moisture leads" */
  sums: string;
  /** The same in parts, each with the glyphs it speaks of. */
  parts: { glyphs: GlyphName[]; text: string }[];
  /** The strip folded to a tag: "2 proteins". */
  short: string;
  /** One line for each thing the product is checked against (the head in use, the routine in use). */
  verdicts: { who: string; answer: Answer; answerWord: string; text: string }[];
  /** Buttons, in order. */
  actions: { id: StripAction; word: string }[];
};

export type PainterWord = 'names' | 'fold' | 'unfold' | 'move' | 'next' | 'more' | 'share';

/** What the background answers for one list. */
export type PaintOrder = {
  list: number;
  lang: string;
  dir: 'ltr' | 'rtl';
  /** Empty text in all fields when the background says this is no cosmetic list: nothing is painted. */
  isList: boolean;
  proteinMentions: number;
  marks: Mark[];
  strip: StripWords;
  /** Words of the painter itself: names of its controls and axes. */
  words: Record<PainterWord, string>;
  scheme: { protein: boolean; moisture: boolean; glyphSize: 'small' | 'medium' | 'large' };
};
