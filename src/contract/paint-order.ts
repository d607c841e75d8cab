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
  | 'with-care'
  | 'does-not-suit'
  | 'unsure'
  | 'mended';

/**
 * What the page draws as it is told, so that no word and no shape of ours need stand in its script: text, an element
 * of ours with its attributes and children, or the number of one that `PaintOrder.shared` holds.
 */
export type Drawing = string | number | DrawnElement;
export type DrawnElement = [tag: string, attributes: Record<string, string | number>, ...Drawing[]];

/** Kinds of line in a page: of a name, and `at` of the name whose card is open. */
export const lines = ['free', 'small', 'large', 'bearing', 'moisture', 'at'] as const;

/** What one name on the page gets: its underline, its glyph and its card. All words are ready to show. */
export type Mark = {
  from: number;
  to: number;
  line: Exclude<(typeof lines)[number], 'at'>;
  /** What it is, in a few words, for who cannot see the glyph. */
  label: string;
  glyph: Drawing;
  card: Drawing[];
};

export type StripAction =
  | 'panel'
  | 'compare'
  | 'add'
  | 'person'
  | 'keep'
  | 'picture'
  | 'pause'
  | 'not-a-list';

/** What a button of the strip does, in its attribute `data-does`: in the page, or as the background is asked. */
export type Does = 'fold' | 'move' | 'next' | 'more' | StripAction;

/** What the background answers for one cosmetic list; for any other it answers nothing. */
export type PaintOrder = {
  list: number;
  lang: string;
  dir: 'ltr' | 'rtl';
  proteinMentions: number;
  /** Names that are underlined, in the order of the label. */
  marks: Mark[];
  /** What the names are called together. */
  names: string;
  /** Size of a name's glyph beside that of the glyph in its card. */
  glyphSize: number;
  strip: { label: string; open: Drawing[]; folded: Drawing[] };
  /** What to say when nobody answers the strip any more: the extension was updated. */
  orphaned: Drawing[];
  /** Elements that are drawn more than once. */
  shared: DrawnElement[];
};
