import type { Range } from '../core/entry.ts';
import type { Answer } from '../core/finding.ts';

/** Names of our own glyphs (src/ui/glyphs). */
export type GlyphName = 'free' | 'small' | 'large' | 'bearing' | 'draws' | 'softens' | 'seals' | 'unsure';

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
  glyphs: GlyphName[];
  /** Plain sentences, in order: what it is, size and source, why, caution. */
  lines: string[];
  share: Range;
  shareWords: string;
  source: string;
};

/** The strip by a list. */
export type StripWords = {
  label: string;
  glyphs: GlyphName[];
  /** "2 proteins, both large, at most 1 % each · moisture leads" */
  sums: string;
  /** One line for each thing the product is checked against (the head in use, the routine in use). */
  verdicts: { answer: Answer; answerWord: string; text: string }[];
  /** Buttons, in order. */
  actions: { id: 'panel' | 'compare' | 'add' | 'keep' | 'pause' | 'not-a-list'; word: string }[];
};

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
  scheme: { protein: boolean; moisture: boolean; glyphSize: 'small' | 'medium' | 'large' };
};
