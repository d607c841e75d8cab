import type { GlyphName } from '../../contract/paint-order.ts';
import type { Brings } from '../../core/amounts/brings.ts';
import { isProtein, type Mention, type Reading, shareOf } from '../../core/reading/reading.ts';
import type { Translate } from '../words/index.ts';
import { moistureBrought, proteinBrought } from './brings.ts';
import { dotted } from './dotted.ts';
import { glyphsOf } from './mark.ts';

/** One thing a label sums up to, with the glyphs it speaks of. */
export type Part = { glyphs: GlyphName[]; text: string };

const bySize = ['large', 'small', 'free', 'unknown'] as const;

/** Names by size and the most each can be: where nothing is known of how the product is used. */
function namesWords(proteins: Mention[], t: Translate): string {
  const n = proteins.length;
  const max = Math.max(...proteins.map((each) => shareOf(each).max));
  const counts = bySize
    .map((size) => ({ size, n: proteins.filter((each) => each.protein?.size === size).length }))
    .filter((each) => each.n > 0);
  return counts.length === 1
    ? t('page.sums.names', { n, size: counts[0]!.size, max })
    : t('page.sums.names-mixed', { n, max, sizes: counts.map((each) => t('page.sums.of-size', each)) });
}

function proteinWords(reading: Reading, t: Translate, brings: Brings | undefined): string {
  const proteins = reading.mentions.filter(isProtein);
  if (proteins.length > 0) return brings ? proteinBrought(brings, t) : namesWords(proteins, t);
  if (reading.protein === 'unknown') return t('page.sums.protein-unknown');
  const n = reading.mentions.filter((each) => each.protein?.kind === 'protein-bearing').length;
  return n > 0 ? t('page.sums.bearing', { n }) : t('page.sums.no-protein');
}

/** What a label sums up to, part by part: how it washes, protein, moisture, what could not be read. */
export function shownParts(reading: Reading, t: Translate, brings?: Brings): Part[] {
  if (reading.refused) return [{ glyphs: ['unsure'], text: t(`page.refused.${reading.refused}`) }];
  const unknown = reading.mentions.filter((each) => each.found.how === 'none').length;
  const there = new Set(reading.mentions.flatMap(glyphsOf));
  const among = (...names: GlyphName[]) => names.filter((name) => there.has(name));
  const sure = brings?.unsure ? undefined : brings;
  return [
    ...(brings?.washes ? [{ glyphs: [], text: t(`page.brings.washes.${brings.washes}`) }] : []),
    { glyphs: among('large', 'small', 'free', 'bearing'), text: proteinWords(reading, t, sure) },
    {
      glyphs: among('draws', 'softens', 'seals'),
      text: sure ? moistureBrought(sure, t) : t(`page.sums.moisture.${reading.moisture}`),
    },
    ...(unknown > 0 ? [{ glyphs: [], text: t('page.sums.unknown', { n: unknown }) }] : []),
  ];
}

/**
 * "a little protein (small) · some moisture (softens, draws water) · 3 names not known"; where it is not known how
 * the product is used, what the list alone says: "2 proteins, both large, at most 1 % each · moisture leads".
 */
export const sumsOf = (reading: Reading, t: Translate, brings?: Brings): string =>
  dotted(shownParts(reading, t, brings).map(({ text }) => text));

/** The names alone, for the folded strip. */
export function shortOf(reading: Reading, t: Translate): string {
  if (reading.refused) return t(`page.refused.${reading.refused}`);
  const n = reading.mentions.filter(isProtein).length;
  if (n > 0) return t('page.sums.proteins', { n });
  return t(reading.protein === 'unknown' ? 'page.sums.protein-unknown' : 'page.sums.no-protein');
}
