import { type Brings, bringsOf, exposureOf, type Together, together } from '../amounts/brings.ts';
import type { WashDayPractice } from '../judge/practice.ts';
import type { Reading } from '../reading/reading.ts';
import type { Step } from './routine.ts';

export type StepStays = Brings & {
  step: string;
  /** Key of the source of the grams. */
  source: string;
  /** No label was read: what it brings is not known, not nothing. */
  unread: boolean;
};

/** What one kind of wash day brings in all. */
export type DayStays = Together & { unread: number };

export type Stays = {
  steps: StepStays[];
  /** Of the steps of every wash; and of all steps, as on a wash on which what alternates comes too. */
  everyWash: DayStays;
  day: DayStays;
};

const nothing: Reading = {
  mentions: [],
  order: 'uninformative',
  protein: 'unknown',
  moisture: 'unknown',
  read: 0,
  assumesLimits: false,
};

/** What the steps of a routine bring, and what they come to. Steps without a product stay out. */
export function staysOf(
  steps: readonly (Step & { reading: Reading | undefined; filled: boolean })[],
  practice: WashDayPractice,
): Stays {
  const filled = steps.filter((step) => step.filled);
  const all = filled.map((step): StepStays => {
    const { grams, ...used } = step;
    return {
      ...bringsOf(step.reading ?? nothing, { ...used, ...(grams !== undefined && { grams }) }, practice),
      step: step.id,
      source: exposureOf(step, practice).source,
      unread: (step.reading?.mentions.length ?? 0) === 0,
    };
  });
  const sum = (some: readonly StepStays[]): DayStays => ({
    ...together(some, practice),
    unread: some.filter(({ unread }) => unread).length,
  });
  return {
    steps: all,
    everyWash: sum(all.filter((_, index) => filled[index]!.cadence.every === 'wash')),
    day: sum(all),
  };
}
