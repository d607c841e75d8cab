import type { Day, DayStep } from '../../wash-day/rules/day.ts';
import type { BuildChoice } from './choices.ts';
import { type Cost, type Weight, weightsOf } from './cost.ts';
import type { PlanPractice } from './plan-practice.ts';

/** One option of a slot: a product that does the step, or nothing there. */
export type SlotOption = BuildChoice | undefined;

/** A day whose first slots are settled, and the least it costs, whatever is taken at the others. */
export type DayBegun = {
  taken: readonly SlotOption[];
  least: number;
  /** What the steps cost by themselves, and what each weight saw of them. */
  sure: number;
  rows: readonly string[];
};

/** A day's steps in their usual order. */
export function dayStepsOf(taken: readonly SlotOption[], { practice }: Pick<Day, 'practice'>): DayStep[] {
  const { order } = practice.washDay.kinds;
  return taken
    .flatMap((option) => option?.step ?? [])
    .toSorted((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}

/**
 * Ways to begin a day and to go on with it, each with the least it costs; where all slots are settled, what it
 * costs. A weight counts as it stands where no later slot is seen by it, as its least where none can soften it, else
 * nothing; each slot adds no less than its cheapest option does by itself. What a weight says of a row of looks is
 * kept, as it sees nothing else.
 */
export function beginnings(
  slots: readonly (readonly SlotOption[])[],
  empty: Day,
  plan: PlanPractice,
  stepsAtMost = Number.POSITIVE_INFINITY,
): { root: DayBegun; settle: (begun: DayBegun, option: SlotOption) => DayBegun } {
  const weights = weightsOf(plan).map((weight) => looking(weight, slots, empty));
  const after = [...slots, []].map((_, at) =>
    slots
      .slice(at)
      .map((options) => Math.min(...options.map((option) => option?.cost ?? 0)))
      .toSorted((a, b) => a - b),
  );
  const bounded = (begun: Omit<DayBegun, 'least'>): DayBegun => {
    const settled = begun.taken.length;
    const taken = begun.taken.reduce((n, option) => (option ? n + 1 : n), 0);
    const rest = after[settled]!.slice(0, Math.max(0, stepsAtMost - taken));
    const together = weights.reduce((sum, { states, cost }, at) => {
      const state = states[settled]!;
      return state === 'open' ? sum : sum + cost(begun.rows[at]!, begun.taken)[state];
    }, begun.sure);
    return { ...begun, least: rest.reduce((sum, cost) => sum + cost, together) };
  };
  return {
    root: bounded({ taken: [], sure: 0, rows: weights.map(() => '') }),
    settle(begun, option) {
      const taken = [...begun.taken, option];
      if (!option) return bounded({ ...begun, taken });
      const rows = weights.map(({ letters }, at) => begun.rows[at]! + letters.get(option));
      return bounded({ taken, rows, sure: begun.sure + option.cost });
    },
  };
}

/** A weight with a letter for each look at each slot, and what it can say after so many slots are settled. */
function looking(weight: Weight, slots: readonly (readonly SlotOption[])[], empty: Day) {
  const looks = slots.map((options) =>
    options.map((option) => (option ? weight.sees(option.step, empty) : '')),
  );
  const states = [...slots, []].map((_, at) => {
    const later = looks
      .slice(at)
      .flat()
      .filter((look) => look !== '');
    return later.length === 0 ? 'now' : later.some(weight.softens) ? 'open' : 'least';
  });
  const known = new Map<string, string>([]);
  const letters = new Map<SlotOption, string>();
  for (const [slot, options] of slots.entries())
    for (const [at, option] of options.entries()) {
      const look = looks[slot]![at]!;
      const key = `${slot} ${look}`;
      if (look !== '' && !known.has(key)) known.set(key, String.fromCharCode(1 + known.size));
      letters.set(option, known.get(key) ?? '');
    }
  const costs = new Map<string, Cost>();
  return {
    states,
    letters,
    cost(row: string, taken: readonly SlotOption[]): Cost {
      let cost = costs.get(row);
      if (!cost) {
        cost = weight.cost({ ...empty, steps: dayStepsOf(taken, empty) });
        costs.set(row, cost);
      }
      return cost;
    },
  };
}
