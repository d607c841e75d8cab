import type { Cadence } from '../routine.ts';

/** Whether a step of cadence `a` is done on every wash day on which one of cadence `b` is. */
export function alwaysComesWith(a: Cadence, b: Cadence): boolean {
  if (a.every === 'wash') return true;
  if (b.every !== a.every) return false;
  return a.every === 'nth-wash' ? b.n % a.n === 0 : a.n === b.n;
}

/** Days from one time a step is done to the next: steps are only done on wash days. */
export function daysBetweenTimes(cadence: Cadence, washEvery: number): number {
  const wash = Math.max(1, washEvery);
  return washesBetween(cadence, washEvery) * wash;
}

/** A step is done at every so many washes. */
export function washesBetween(cadence: Cadence, washEvery: number): number {
  if (cadence.every === 'wash') return 1;
  const n = Math.max(1, cadence.n);
  return cadence.every === 'nth-wash' ? n : Math.ceil(n / Math.max(1, washEvery));
}
