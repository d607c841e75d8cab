import type { LikelyWhy } from '../../core/amounts/likely.ts';
import type { Range } from '../../core/names/entry.ts';
import type { Mention, Reading } from '../../core/reading/reading.ts';
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
  const likely = likelyWords(mention, reading, t);
  return [likely, why, reading.assumesLimits ? t('page.share.if-limits') : ''].filter(Boolean).join(' ');
}

/** "Likely up to 5 % (…); the label alone would allow 14 %." Empty where nothing is likely beyond the label. */
function likelyWords({ likely, likelyWhy, share }: Mention, reading: Reading, t: Translate): string {
  if (likelyWhy?.basis === 'unusual') return t('page.likely.unusual');
  if (!likely || !likelyWhy || likely.max >= share.max) return '';
  return t('page.likely', { max: likely.max, allowed: share.max, why: whyWords(likelyWhy, reading, t) });
}

function whyWords({ basis, after }: LikelyWhy, { mentions, use }: Reading, t: Translate): string {
  const name = after === undefined ? '' : (mentions[after]?.raw ?? '');
  if (basis === 'mark') return name ? t('page.likely.why.mark', { name }) : t('page.likely.why.is-mark');
  if (basis === 'order') return t('page.likely.why.order', { name });
  if (basis === 'unusual') return '';
  return t(`page.likely.why.${basis}`, { use: use === undefined ? 'any' : uses[use] });
}

const uses = { 'rinse-off': 'rinse', 'leave-on': 'leave' } as const;

/** "some, likely up to 5 %", or what the label allows where no share is likelier. */
export const amountWords = ({ likely, amount, share }: Mention, t: Translate): string =>
  likely && amount && share.min < share.max
    ? t('page.likely.short', { amount: t(`page.amount.${amount}`), max: likely.max })
    : rangeWords(share, t);

/** "up to 4 %" · "1 to 20 %" · "3 %" */
export function rangeWords({ min, max }: Range, t: Translate): string {
  if (min === max) return t('shell.share.exactly', { max });
  return min === 0 ? t('shell.share.up-to', { max }) : t('shell.share.between', { min, max });
}
