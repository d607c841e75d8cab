import { type Answer, answersByWeight, type Finding, worstOf } from '../judge/finding.ts';
import type { FitContext } from '../judge/fit.ts';
import type { Reading } from '../reading/reading.ts';
import { newestFirst } from './days.ts';
import { type Stays, staysOf } from './retained.ts';
import type { LogEntry, Routine } from './routine.ts';
import {
  type Day,
  type DayStep,
  dayStep,
  distinctProducts,
  filledSteps,
  hairOf,
  staysOn,
} from './rules/day.ts';
import { rules } from './rules/index.ts';

export type WashDayInput = FitContext & {
  routine: Routine;
  /** By step id; a step whose product has no readable label is absent or undefined. */
  readings: ReadonlyMap<string, Reading | undefined>;
  /** All entries; those of other heads are left out here. */
  log: readonly LogEntry[];
  /** ISO date. */
  today: string;
};

/** Products that surely and possibly carry protein, and what the hair's allowance has room for. */
export type ProteinCount = { sure: number; maybe: number; allowed?: number };

export type WashDay = {
  /** The whole day in one answer: the worst of them. */
  answer: Answer;
  /** Every rule's answers, the worst first; in rule order within. */
  findings: Finding[];
  stays: Stays;
  protein: { products: ProteinCount; leaveOns: ProteinCount };
};

/** The day as rules see it. Pure. */
export function dayOf({ routine, readings, head, allowance, log, today, practice }: WashDayInput): Day {
  return {
    steps: routine.steps.map((step) => dayStep(step, readings.get(step.id), practice)),
    head,
    hair: hairOf({ head, allowance, washEvery: routine.washEvery, practice }),
    numbers: allowance?.numbers,
    washEvery: routine.washEvery,
    log: log.filter((entry) => entry.head === routine.head).toSorted(newestFirst),
    today,
    practice,
  };
}

export const findingsOf = (day: Day): Finding[] =>
  rules.flatMap((rule) => rule.ask(day)).toSorted((a, b) => weightOf(a) - weightOf(b));

const weightOf = ({ answer }: Finding) => answersByWeight.indexOf(answer);

/** What a planned wash day adds up to: findings by every rule, what stays on the hair, and the protein count. */
export function washDay(input: WashDayInput): WashDay {
  const day = dayOf(input);
  const findings = findingsOf(day);
  return {
    answer: worstOf(findings),
    findings,
    stays: staysOf(day.steps, input.practice.washDay),
    protein: {
      products: countOf(filledSteps(day), day.numbers?.products),
      leaveOns: countOf(filledSteps(day).filter(staysOn), day.numbers?.leaveOns),
    },
  };
}

/** How many products carry protein: a count, not a complaint. */
function countOf(steps: readonly DayStep[], allowed: number | undefined): ProteinCount {
  const among = distinctProducts(steps);
  const count = (which: 'yes' | 'maybe') => among.filter(({ traits }) => traits.protein === which).length;
  return { sure: count('yes'), maybe: count('maybe'), ...(allowed !== undefined && { allowed }) };
}
