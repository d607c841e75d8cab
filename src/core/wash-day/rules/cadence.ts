import type { Cadence } from '../routine.ts';

/** Whether a step of cadence `a` is done on every wash day on which one of cadence `b` is. */
export function alwaysComesWith(a: Cadence, b: Cadence): boolean {
  if (a.every === 'wash') return true;
  if (b.every !== a.every) return false;
  if (a.every === 'nth-wash' && b.every === 'nth-wash')
    return b.n % a.n === 0 && ((b.from ?? 1) - (a.from ?? 1)) % a.n === 0;
  return a.every === 'days' && a.n === b.n;
}

/** Washes that are walked through at most to see rhythms come round. */
const walked = 1_000;

/** Whether on every wash day of cadence `b` one of these is done at least: several may take turns. */
export function oneAlwaysComesWith(some: readonly Cadence[], b: Cadence): boolean {
  if (some.some((a) => alwaysComesWith(a, b))) return true;
  const turns = some.flatMap((a) => (a.every === 'nth-wash' ? [a] : []));
  if (b.every === 'days' || turns.length === 0) return false;
  const treats = b.every === 'wash' ? { n: 1 } : b;
  const round = [treats, ...turns].reduce((all, { n }) => (all * n) / divisor(all, n), 1);
  if (!(round <= walked)) return false;
  const comes = ({ n, from = 1 }: { n: number; from?: number }, count: number) => (count - from) % n === 0;
  for (let count = walked; count < walked + round; count++)
    if (comes(treats, count) && !turns.some((turn) => comes(turn, count))) return false;
  return true;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Washes between steps that take turns, at least; nought where two may meet, as rhythms of their own do. */
export function washesApart(cadences: readonly Cadence[]): number {
  const turns = cadences.flatMap((cadence) => (cadence.every === 'nth-wash' ? [cadence] : []));
  const n = turns[0]?.n ?? 0;
  if (turns.length < cadences.length || turns.some((turn) => turn.n !== n)) return 0;
  const counts = turns.map(({ from = 1 }) => from).toSorted((a, b) => a - b);
  return Math.min(...counts.map((count, at) => (counts[at + 1] ?? counts[0]! + n) - count));
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
