import { type BringStep, steps } from '../amounts/brings.ts';
import type { Practice } from '../judge/practice.ts';
import type { Reading } from '../reading/reading.ts';
import { staysOf } from '../wash-day/retained.ts';
import type { LogEntry } from '../wash-day/routine.ts';
import { dayStep, staysOn } from '../wash-day/rules/day.ts';
import { dayFelt } from './day-feel.ts';

type BroughtKey = `${'protein' | 'moisture'}.${BringStep}`;

/** What a wash day may have in common with others: how much the whole day brings in the four steps, and of what. */
export type Tallied =
  | BroughtKey
  | 'small-protein'
  | 'large-protein'
  | 'leave-on-protein'
  | 'treatment'
  | 'humectants-in-front'
  | 'rich-leave-on';

const brought = (what: 'protein' | 'moisture'): BroughtKey[] =>
  steps.map((step): BroughtKey => `${what}.${step}`);
const tallied: Tallied[] = [
  ...brought('protein'),
  'small-protein',
  'large-protein',
  'leave-on-protein',
  'treatment',
  ...brought('moisture'),
  'humectants-in-front',
  'rich-leave-on',
];

export type Tally = {
  /** Days that were told how they felt and whose labels were read, and the balanced ones among them. */
  days: number;
  good: number;
  /** How many of the good days, and of the others, share a thing. Counts, never proof. */
  rows: { what: Tallied; good: number; others: number }[];
};

/** Which of protein and moisture the good days share; undefined while too few days are logged. Pure. */
export function tallyOf(
  entries: readonly LogEntry[],
  readingOf: (label: string, step: LogEntry['done']['steps'][number]) => Reading | undefined,
  practice: Practice,
): Tally | undefined {
  const told = entries
    .map((entry) => ({
      felt: dayFelt(entry.feel, practice.allowance.feel),
      shares: sharesOf(entry, readingOf, practice),
    }))
    .filter(({ felt, shares }) => felt !== 'untold' && shares !== undefined);
  if (told.length < practice.washDay.thresholds.tallyFrom) return undefined;
  const good = told.filter(({ felt }) => felt === 'balanced');
  const others = told.filter(({ felt }) => felt !== 'balanced');
  const count = (days: typeof told, what: Tallied) => days.filter(({ shares }) => shares!.has(what)).length;
  return {
    days: told.length,
    good: good.length,
    rows: tallied.map((what) => ({ what, good: count(good, what), others: count(others, what) })),
  };
}

function sharesOf(
  { done }: LogEntry,
  readingOf: Parameters<typeof tallyOf>[1],
  practice: Practice,
): Set<Tallied> | undefined {
  const used = done.steps
    .filter(({ label }) => label !== undefined)
    .map((step) => dayStep(step, readingOf(step.label!, step), practice, true));
  if (used.length === 0 || used.some(({ traits }) => traits.read === 'none')) return undefined;
  const leaveOns = used.filter(staysOn);
  const { protein, moisture } = staysOf(used, practice.washDay).day;
  const size = (which: 'small' | 'large') =>
    used.some(({ reading, traits }) =>
      traits.doses.some((at) => reading!.mentions[at]!.protein!.size === which),
    );
  const is: Record<Exclude<Tallied, BroughtKey>, boolean> = {
    'small-protein': size('small'),
    'large-protein': size('large'),
    'leave-on-protein': leaveOns.some(({ traits }) => traits.protein === 'yes'),
    treatment: done.steps.some(({ kind }) => practice.washDay.kinds.strengthening.includes(kind)),
    'humectants-in-front': leaveOns.some(({ traits }) => traits.humectantsInFront.length > 0),
    'rich-leave-on': leaveOns.some(({ traits }) => traits.heavy.length > 0),
  };
  const others = (Object.keys(is) as (keyof typeof is)[]).filter((what) => is[what]);
  return new Set<Tallied>([`protein.${protein.step}`, `moisture.${moisture.step}`, ...others]);
}
