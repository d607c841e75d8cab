/** What a wash day that went wrong felt like, the most telling first. */
export const signs = ['coated', 'stiff', 'limp', 'dry', 'frizzy'] as const;
export type Sign = (typeof signs)[number];

/**
 * What may be behind it: too much `protein`, none at all (`strength`), leave-ons that set hard (`hold`), too
 * little `moisture`, too much `weight`, `films` that nothing lifts, a `harsh` wash.
 */
export type Cause = 'protein' | 'strength' | 'hold' | 'moisture' | 'weight' | 'films' | 'harsh';

/** dictionary/learn.json: what a logged wash day may teach. Common practice throughout. */
export type LearnPractice = {
  /** Causes of each sign, the likeliest first. */
  signs: Record<Sign, Cause[]>;
  /** From this much on, in the measure of `causes.ts`, a cause is there. */
  from: Record<Cause, number>;
  /** Part of a cause that a change has to take away to be worth making: 0…1. */
  by: number;
  /** An added cleanser that lifts films comes at every so many washes. */
  clarifyEvery: number;
  sources: string[];
};
