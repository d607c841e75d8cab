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
  if (cadence.every === 'wash') return wash;
  const n = Math.max(1, cadence.n);
  return cadence.every === 'nth-wash' ? n * wash : Math.ceil(n / wash) * wash;
}
