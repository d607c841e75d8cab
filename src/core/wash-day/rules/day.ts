import type { Head } from '../../hair/head.ts';
import { type Against, against, type FitContext } from '../../judge/asked.ts';
import type { Answer, Aspect, Finding, Said } from '../../judge/finding.ts';
import type { AllowanceLevel, Practice, WashDayPractice } from '../../judge/practice.ts';
import { type Traits, traitsOf } from '../../judge/traits.ts';
import type { ProductKind } from '../../product/product.ts';
import type { Reading } from '../../reading/reading.ts';
import type { LogEntry, Step } from '../routine.ts';

export { mentionsOf } from '../../judge/asked.ts';

/** A step as rules see it: `filled` when it holds a product. */
export type DayStep = Step & { reading: Reading | undefined; traits: Traits; filled: boolean };

/** The whole of what a rule may know. */
export type Day = {
  steps: DayStep[];
  head: Head | undefined;
  /** The head in numbers, at this rhythm of washing. */
  hair: Against;
  /** Of the tolerance; absent while the hair is not described. */
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
  /** Whether a step that changes from one look to another may help to settle a finding; by default any change may. */
  mayHelp?(before: string, after: string): boolean;
  /** Whether one more step of such a look may make it speak less loud; by default any that it sees may. */
  softens?(look: string): boolean;
  /** Fewest steps that must change to settle a finding, given all looks a step could take on; 1 where not said. */
  excess?(finding: Finding, reachable: readonly string[]): number;
  ask(day: Day): Finding[];
};

/** A step with its label read once; traits are kept per reading, since the same label is asked often. */
export function dayStep(
  step: Step,
  reading: Reading | undefined,
  practice: Practice,
  filled = step.product !== undefined,
): DayStep {
  const worn = `${step.kind} ${step.use}`;
  let traits = reading && known.get(reading)?.get(practice)?.get(worn);
  if (!traits) {
    traits = traitsOf(reading, step, practice);
    if (reading) {
      const of = known.get(reading) ?? new WeakMap<Practice, Map<string, Traits>>();
      const kept = of.get(practice) ?? new Map<string, Traits>();
      known.set(reading, of.set(practice, kept.set(worn, traits)));
    }
  }
  return { ...step, reading, traits, filled };
}
const known = new WeakMap<Reading, WeakMap<Practice, Map<string, Traits>>>();

/** What a day is asked against: the head in its numbers. */
export const hairOf = (context: FitContext & { washEvery: number }): Against => against(context);

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

export const staysOn = ({ use }: Pick<Step, 'use'>) => use === 'leave-on';

type Rest = {
  steps?: readonly DayStep[];
  mentions?: Finding['mentions'];
  condition?: Said | undefined;
  unknown?: Said | undefined;
  /** How much of it, so that a day before and after can be compared. */
  extent?: number;
};

export const finding = (
  { id, aspect }: Pick<Rule, 'id' | 'aspect'>,
  answer: Answer,
  reason: Said,
  rest: Rest = {},
): Finding => ({
  rule: id,
  aspect,
  answer,
  reason,
  steps: (rest.steps ?? []).map(({ id }) => id),
  mentions: rest.mentions ?? [],
  ...(rest.condition && { condition: rest.condition }),
  ...(rest.unknown && { unknown: rest.unknown }),
  ...(rest.extent !== undefined && { extent: rest.extent }),
});
