import type { Reading } from '../../core/reading.ts';
import type { Translate } from '../words/index.ts';

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
