import type { Cadence, LogEntry, Step } from './routine.ts';

type Nth = Extract<Cadence, { every: 'nth-wash' }>;
type Turning = Step & { cadence: Nth };

/** A step that comes every n-th wash, on a turn of its own: it says which, or another of the same n does. */
export const takesTurns = (step: Step, steps: readonly Step[]): step is Turning => {
  const { cadence } = step;
  if (cadence.every !== 'nth-wash') return false;
  return steps.some(
    ({ cadence: other }) => other.every === 'nth-wash' && other.n === cadence.n && other.from !== undefined,
  );
};

export const isTurn = (cadence: Cadence, count: number): boolean =>
  cadence.every === 'nth-wash' && (count - (cadence.from ?? 1)) % cadence.n === 0;

/**
 * Whether a wash day names a step: by its id; where the wash day is older than the step, by its product, else by
 * its kind, as long as no other step of that kind is named.
 */
export function names({ done }: LogEntry, step: Step, steps: readonly Step[]): boolean {
  const alike = steps.filter(({ kind }) => kind === step.kind);
  const named = (one: Step) => done.steps.some(({ id }) => id === one.id);
  if (alike.some(named)) return named(step);
  const older = done.steps.filter(({ kind }) => kind === step.kind);
  const same = (one: Step) =>
    one.product !== undefined && older.some(({ product }) => product === one.product);
  return alike.some(same) ? same(step) : older.length > 0;
}

/**
 * Place of the next wash in the count that steps take turns by, 1 for the first. The log is walked through: each
 * wash counts one, and one that was done out of turn moves the count on to its turn, so that another is next.
 * Before any of them was done the count begins with the next wash. Pure.
 */
export function countOfNext(steps: readonly Step[], log: readonly LogEntry[]): number {
  const turning = steps.filter((step) => takesTurns(step, steps));
  if (turning.length === 0) return 1;
  let count: number | undefined;
  for (const entry of log) {
    if (count !== undefined) count++;
    const done = turning.filter((step) => names(entry, step, steps));
    if (done.length > 0) count = Math.min(...done.map(({ cadence }) => turnFrom(cadence, count ?? 1)));
  }
  if (count !== undefined) return count + 1;
  // Where none comes first, counting always from the next wash would put them off for ever.
  return turning.some(({ cadence: { from = 1 } }) => from === 1) ? 1 : log.length + 1;
}

/** The first count from here on that is a step's turn. */
function turnFrom({ n, from = 1 }: Nth, count: number): number {
  return count + ((((from - count) % n) + n) % n);
}
