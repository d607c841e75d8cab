import { withStays } from '../core/amounts/brings.ts';
import { withOwn } from '../core/amounts/own-amounts.ts';
import type { Practice } from '../core/judge/practice.ts';
import { type ReadFor, readAsOf } from '../core/product/read-as.ts';
import type { ReadOptions } from '../core/reading/reading.ts';
import type { Remembered } from '../store/remembered.ts';
import { headInUse } from './in-use.ts';

type Told = Pick<Remembered, 'settings'>;
type Of = Told & Partial<Pick<Remembered, 'heads'>>;

/** The numbers of practice with what the user changed of them, and the amounts of the head in use. */
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

/**
 * How a label is read by what is remembered: for its kind and use, in the market it is told to be of, and unknown
 * names as the user has them read.
 */
export function readOptionsOf(
  { markets }: Practice,
  { settings, readAs }: Pick<Remembered, 'settings' | 'readAs'>,
  as: ReadFor | undefined,
): ReadOptions {
  return {
    ...readAsOf(as, { markets, told: settings.market }),
    ...(Object.keys(readAs).length > 0 && { readAs }),
  };
}
