import type { Head } from '../../hair/head.ts';
import type { Answer, Aspect, Finding, Said } from '../../judge/finding.ts';
import type { AllowanceLevel, Practice, WashDayPractice } from '../../judge/practice.ts';
import type { ProductKind } from '../../product/product.ts';
import type { Reading } from '../../reading/reading.ts';
import type { LogEntry, Step } from '../routine.ts';
import { type Traits, traitsOf } from './traits.ts';

/** What `allowanceOf` (hair.ts) tells the rules: absent numbers mean the hair is not described. */
export type AllowanceInUse = { numbers?: AllowanceLevel };

/** A step as rules see it: `filled` when it holds a product. */
export type DayStep = Step & { reading: Reading | undefined; traits: Traits; filled: boolean };

/** The whole of what a rule may know. */
export type Day = {
  steps: DayStep[];
  head: Head | undefined;
  numbers: AllowanceLevel | undefined;
  washEvery: number;
  /** Entries of this head, newest first. */
  log: LogEntry[];
  /** ISO date. */
  today: string;
  practice: Practice;
};

/** One question. `id` is the file's name. */
export type Rule = {
  id: string;
  /** Asked of each product alone, or of the whole day. */
  of: 'product' | 'day';
  aspect: Aspect;
  /** All that the answer takes from one step: steps that look alike here are alike to this rule. */
  sees(step: DayStep, day: Day): string;
  /** Whether a step that changes from one look to another may help to settle a clash; by default any change may. */
  mayHelp?(before: string, after: string): boolean;
  /** Fewest steps that must change to settle a clash, given all looks a step could take on; 1 where not said. */
  excess?(finding: Finding, reachable: readonly string[]): number;
  ask(day: Day): Finding[];
};

/** A step with its label read once; traits are kept per reading, since the same label is asked often. */
export function dayStep(
  step: Step,
  reading: Reading | undefined,
  practice: WashDayPractice,
  filled = step.product !== undefined,
): DayStep {
  let traits = reading && known.get(reading)?.get(practice);
  if (!traits) {
    traits = traitsOf(reading, practice);
    if (reading) {
      const of = known.get(reading) ?? new WeakMap<WashDayPractice, Traits>();
      known.set(reading, of.set(practice, traits));
    }
  }
  return { ...step, reading, traits, filled };
}
const known = new WeakMap<Reading, WeakMap<WashDayPractice, Traits>>();

export const filledSteps = (day: Day) => day.steps.filter(({ filled }) => filled);

/**
 * Steps that count as products of their own: a second layer of the same product is no second product
 * (common practice: a towel takes some of the first with it).
 */
export function distinctProducts(steps: readonly DayStep[]): DayStep[] {
  const seen = new Set<string>();
  return steps.filter(({ product, id }) => {
    const key = product ?? `step ${id}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

export const isKind = (day: Day, which: keyof WashDayPractice['kinds'], { kind }: { kind: ProductKind }) =>
  day.practice.washDay.kinds[which].includes(kind);

/** Mentions of a step as a finding names them. */
export const mentionsOf = (step: DayStep, indexes: readonly number[]) =>
  indexes.map((index) => ({ step: step.id, index }));

/** What made a step's protein certain or possible. */
export const proteinMentions = (step: DayStep) =>
  mentionsOf(step, step.traits.doses.length > 0 ? step.traits.doses : step.traits.bearing);

/** The allowance of one number, or the span over all levels while the hair is not described. */
export function allowed(day: Day, what: 'products' | 'leaveOns') {
  if (day.numbers) return { min: day.numbers[what], max: day.numbers[what], told: true };
  const levels = Object.values(day.practice.allowance.levels).map((level) => level[what]);
  return { min: Math.min(...levels), max: Math.max(...levels), told: false };
}

export const finding = (
  { id, aspect }: Pick<Rule, 'id' | 'aspect'>,
  answer: Answer,
  reason: Said,
  rest: {
    steps?: readonly DayStep[];
    mentions?: Finding['mentions'];
    condition?: Said | undefined;
    unknown?: Said | undefined;
  } = {},
): Finding => ({
  rule: id,
  aspect,
  answer,
  reason,
  steps: (rest.steps ?? []).map(({ id }) => id),
  mentions: rest.mentions ?? [],
  ...(rest.condition && { condition: rest.condition }),
  ...(rest.unknown && { unknown: rest.unknown }),
});
