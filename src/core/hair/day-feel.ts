import type { FeelPractice } from '../judge/practice.ts';
import type { Feel } from '../wash-day/routine.ts';

export type Felt = 'balanced' | 'stiff' | 'limp' | 'neither' | 'untold';

/**
 * How one wash day felt when dry. Rough or brittle speaks of too much protein or too little moisture, limp of
 * the reverse; soft, springy, defined and not dry is balanced. Common practice.
 */
export function dayFelt(feel: Feel, { feltFrom }: Pick<FeelPractice, 'feltFrom'>): Felt {
  if (Object.values(feel).every((value) => value === undefined)) return 'untold';
  const bad = (value = 0) => value <= -feltFrom;
  const good = (value = 0) => value >= feltFrom;
  const rough = bad(feel.soft) || bad(feel.elastic);
  if (rough && !bad(feel.springy)) return 'stiff';
  if (bad(feel.springy) && !bad(feel.elastic)) return 'limp';
  const troubled = rough || bad(feel.defined) || Math.abs(feel.dry ?? 0) >= feltFrom;
  return !troubled && (good(feel.soft) || good(feel.springy) || good(feel.defined)) ? 'balanced' : 'neither';
}
