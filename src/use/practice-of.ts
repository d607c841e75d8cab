import { withStays } from '../core/amounts/brings.ts';
import { withOwn } from '../core/amounts/own-amounts.ts';
import type { Practice } from '../core/judge/practice.ts';
import type { MarketBy } from '../core/product/read-as.ts';
import type { Remembered } from '../store/remembered.ts';
import { headInUse } from './in-use.ts';

type Told = Pick<Remembered, 'settings'>;
type Of = Told & Partial<Pick<Remembered, 'heads'>>;

/** The numbers of practice with what the reader changed of them, and the amounts of the head in use. */
export function practiceOf(practice: Practice, { settings, heads = [] }: Of): Practice {
  const { rinseOffStays, sizesBy } = settings;
  const own = headInUse({ heads, settings })?.uses;
  if (rinseOffStays === undefined && sizesBy === undefined && !own) return practice;
  const { judge } = practice;
  return {
    ...practice,
    washDay: withOwn(withStays(practice.washDay, rinseOffStays), own),
    judge: sizesBy ? { ...judge, dose: { ...judge.dose, sizesBy } } : judge,
  };
}

/** How the market of a label is told. */
export const marketBy = ({ markets }: Practice, { settings }: Told): MarketBy => ({
  markets,
  told: settings.market,
});
