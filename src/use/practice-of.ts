import { withStays } from '../core/amounts/brings.ts';
import type { Practice } from '../core/judge/practice.ts';
import type { MarketBy } from '../core/product/read-as.ts';
import type { Remembered } from '../store/remembered.ts';

type Told = Pick<Remembered, 'settings'>;

/** The numbers of practice with what the reader changed of them. */
export function practiceOf(practice: Practice, { settings: { rinseOffStays, sizesBy } }: Told): Practice {
  if (rinseOffStays === undefined && sizesBy === undefined) return practice;
  const { judge } = practice;
  return {
    ...practice,
    washDay: withStays(practice.washDay, rinseOffStays),
    judge: sizesBy ? { ...judge, dose: { ...judge.dose, sizesBy } } : judge,
  };
}

/** How the market of a label is told. */
export const marketBy = ({ markets }: Practice, { settings }: Told): MarketBy => ({
  markets,
  told: settings.market,
});
