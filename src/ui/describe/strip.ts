import type { GlyphName, StripAction } from '../../contract/paint-order.ts';
import type { Brings } from '../../core/amounts/brings.ts';
import type { Answer } from '../../core/judge/finding.ts';
import { isProtein, type Mention, type Reading, shareOf } from '../../core/reading/reading.ts';
import type { Check } from '../../use/judge-product.ts';
import type { Translate } from '../words/index.ts';
import { moistureBrought, proteinBrought } from './brings.ts';
import { glyphsOf } from './mark.ts';

/** The strip by a list, in words. */
export type StripWords = {
  label: string;
  glyphs: GlyphName[];
  /** What it sums up, part by part, each with the glyphs it speaks of. */
  parts: { glyphs: GlyphName[]; text: string }[];
  /** The strip folded to a tag: "2 proteins". */
  short: string;
  /** One line for each thing the product is checked against (the head in use, the routine in use). */
  verdicts: { who: string; answer: Answer; answerWord: string; text: string }[];
  /** Buttons, in order. */
  actions: { id: StripAction; word: string }[];
};

const bySize = ['large', 'small', 'free', 'unknown'] as const;

function proteinWords(proteins: Mention[], bearing: number, strength: Reading['protein'], t: Translate) {
  const n = proteins.length;
  const maybe = bearing > 0 ? [t('page.sums.bearing', { n: bearing })] : [];
  if (n === 0 && strength === 'unknown') return t('page.sums.protein-unknown');
  if (n === 0)
    return [t(bearing > 0 ? 'page.sums.no-sure-protein' : 'page.sums.no-protein'), ...maybe].join(', ');
  const counts = bySize
    .map((size) => ({ size, n: proteins.filter((each) => each.protein?.size === size).length }))
    .filter((each) => each.n > 0);
  const sizes =
    counts.length === 1
      ? t(n === 1 ? 'page.sums.one-size' : n === 2 ? 'page.sums.both' : 'page.sums.all', {
          size: t(`page.size.${counts[0]?.size}`),
        })
      : counts.map(({ size, n }) => t('page.sums.of-size', { n, size: t(`page.size.${size}`) })).join(', ');
  const max = Math.max(...proteins.map((each) => shareOf(each).max));
  return [
    t('page.sums.proteins', { n }),
    sizes,
    t(n === 1 ? 'page.sums.at-most' : 'page.sums.at-most-each', { max }),
    ...maybe,
  ].join(', ');
}

/** What the strip sums up, part by part: protein, moisture, what could not be read. */
function partsOf(reading: Reading, brings: Brings | undefined, t: Translate): StripWords['parts'] {
  if (reading.refused) return [{ glyphs: ['unsure'], text: t(`page.refused.${reading.refused}`) }];
  const proteins = reading.mentions.filter(isProtein);
  const bearing = reading.mentions.filter((each) => each.protein?.kind === 'protein-bearing').length;
  const unknown = reading.mentions.filter((each) => each.found.how === 'none').length;
  const there = new Set(reading.mentions.flatMap(glyphsOf));
  const among = (...names: GlyphName[]) => names.filter((name) => there.has(name));
  return [
    {
      glyphs: among('large', 'small', 'free', 'bearing'),
      text:
        brings && !brings.unsure && proteins.length > 0
          ? proteinBrought(brings, t)
          : proteinWords(proteins, bearing, reading.protein, t),
    },
    {
      glyphs: among('draws', 'softens', 'seals'),
      text:
        brings && !brings.unsure ? moistureBrought(brings, t) : t(`page.sums.moisture.${reading.moisture}`),
    },
    ...(brings?.washes ? [{ glyphs: [], text: t(`page.brings.washes.${brings.washes}`) }] : []),
    ...(unknown > 0 ? [{ glyphs: [], text: t('page.sums.unknown', { n: unknown }) }] : []),
  ];
}

/**
 * "a little protein (small) · some moisture (softens, draws water) · 3 names not known"; where it is not known how
 * the product is used, what the list alone says: "2 proteins, both large, at most 1 % each · moisture leads".
 */
export const sumsOf = (reading: Reading, t: Translate, brings?: Brings): string =>
  partsOf(reading, brings, t)
    .map(({ text }) => text)
    .join(' · ');

/** The count alone, for the folded strip. */
function shortOf(reading: Reading, t: Translate): string {
  if (reading.refused) return t(`page.refused.${reading.refused}`);
  const n = reading.mentions.filter(isProtein).length;
  if (n > 0) return t('page.sums.proteins', { n });
  return t(reading.protein === 'unknown' ? 'page.sums.protein-unknown' : 'page.sums.no-protein');
}

/** One line for each check: the answer and the reasons that decided it, at most two. */
export function verdictOf(check: Check, t: Translate): StripWords['verdicts'][number] {
  const none = check.findings.length === 0 ? [t('page.verdict.nothing-new')] : [];
  const reasons = check.deciding.flatMap((each) =>
    [each.unknown ?? each.reason, each.condition].flatMap((said) => (said ? [t(said.key, said.values)] : [])),
  );
  return {
    who: t(`page.verdict.${check.about}`, { who: check.who }),
    answer: check.answer,
    answerWord: t(`page.answer.${check.answer}`),
    text: [...new Set([...none, ...reasons])].slice(0, 2).join(' '),
  };
}

/**
 * The whole strip of a product that may have a name. Without a check there is one line that says why nothing
 * can be told; what is kept already is not offered to be kept.
 */
export function stripOf(
  reading: Reading,
  {
    product,
    checks,
    kept,
    brings,
  }: { product: string | undefined; checks: Check[]; kept: boolean; brings?: Brings | undefined },
  t: Translate,
): StripWords {
  const parts = partsOf(reading, brings, t);
  return {
    label: product ? t('page.strip.label-of', { product }) : t('page.strip.label'),
    glyphs: parts.flatMap(({ glyphs }) => glyphs),
    parts,
    short: shortOf(reading, t),
    verdicts: reading.refused
      ? []
      : checks.length > 0
        ? checks.map((check) => verdictOf(check, t))
        : [
            {
              who: t('page.verdict.your-hair'),
              answer: 'cannot-tell',
              answerWord: t('page.answer.cannot-tell'),
              text: t('page.verdict.no-head'),
            },
          ],
    actions: (['panel', 'add', 'compare', 'keep', 'not-a-list', 'pause'] as const)
      .filter((id) => id !== 'keep' || !kept)
      .map((id) => ({ id, word: t(`page.action.${id}`) })),
  };
}
