import type { GlyphName, StripAction } from '../../contract/paint-order.ts';
import type { Brings } from '../../core/amounts/brings.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { Check } from '../../use/judge/judge-product.ts';
import type { Translate } from '../words/index.ts';
import { type Part, shortOf, shownParts } from './sums.ts';
import { notForHairWords, type VerdictWords, verdictOf } from './verdict.ts';

/** The strip by a list, in words. */
export type StripWords = {
  label: string;
  /** For the head in use, then in the routine in use. */
  verdicts: VerdictWords[];
  /** What the label sums up to. */
  parts: Part[];
  glyphs: GlyphName[];
  /** The strip folded to a tag: "2 proteins", or that it is what was looked for. */
  short: string;
  /** Buttons, in order. */
  actions: { id: StripAction; word: string }[];
};

/** What a product that may have a name is held against, and what it brings where its kind is known. */
type Held = {
  product: string | undefined;
  checks: Check[];
  notForHair?: boolean;
  brings?: Brings | undefined;
  kept: boolean;
  /** There are others it may be asked for. */
  people?: boolean;
  /** It is one of the things looked for. */
  granted?: boolean;
};

/**
 * The whole strip. Without a check there is one line that says why nothing can be told; what is kept already is
 * not offered to be kept.
 */
export function stripOf(
  reading: Reading,
  { product, checks, notForHair, brings, kept, people, granted }: Held,
  t: Translate,
): StripWords {
  const found: Part[] = granted ? [{ glyphs: [], text: t('shelf.granted') }] : [];
  const parts = [...found, ...shownParts(reading, t, brings)];
  const untold: VerdictWords = notForHair
    ? notForHairWords(t)
    : { answer: 'cannot-tell', title: t('page.verdict.untold'), why: [t('page.verdict.no-head')], more: [] };
  return {
    label: product ? t('page.strip.label-of', { product }) : t('page.strip.label'),
    verdicts: reading.refused
      ? []
      : checks.length > 0
        ? checks.map((check) => verdictOf(check, t))
        : [untold],
    parts,
    glyphs: parts.flatMap(({ glyphs }) => glyphs),
    short: granted ? t('shelf.granted') : shortOf(reading, t),
    actions: (['panel', 'person', 'add', 'compare', 'keep', 'picture', 'not-a-list', 'pause'] as const)
      .filter((id) => (id !== 'keep' || !kept) && (id !== 'person' || people))
      .map((id) => ({ id, word: id === 'picture' ? t('panel.picture.here') : t(`page.action.${id}`) })),
  };
}
