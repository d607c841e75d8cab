import type { Reading } from '../../core/reading/reading.ts';
import type { Translate } from '../words/index.ts';

const least = 0.01;

/** Place of a share on the log scale from 0.01 % to 100 %, 0…1; what is less stands at the start. */
export const placeOf = (percent: number): number =>
  percent <= least ? 0 : Math.min(1, (Math.log10(percent) + 2) / 4);

/** Why the share of a mention lies where it lies, in one sentence: printed, by the one-percent line, by place. */
export function shareWords(index: number, reading: Reading, t: Translate): string {
  const mention = reading.mentions[index];
  if (!mention) return '';
  if (mention.printed !== undefined) return t('page.share.printed', { share: mention.printed });
  const { min, max } = mention.share;
  const values = { place: index + 1, n: reading.mentions.length, min, max };
  if (reading.order === 'uninformative') return t('page.share.no-order');
  const small = reading.onePercentFrom !== undefined && index >= reading.onePercentFrom;
  const why = t(small ? 'page.share.after-line' : 'page.share.by-place', values);
  return reading.assumesLimits ? `${why} ${t('page.share.if-limits')}` : why;
}
