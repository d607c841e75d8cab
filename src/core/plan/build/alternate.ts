import { type Answer, type Finding, worstOf } from '../../judge/finding.ts';
import { dayOf, type WashDayInput, washDay } from '../../wash-day/add-up.ts';
import { type PlannedDay, plannedDays } from '../../wash-day/calendar.ts';
import { daysBetween } from '../../wash-day/days.ts';
import type { DayStep } from '../../wash-day/rules/day.ts';
import { treatmentDays } from '../../wash-day/rules/protein/treatments-apart.ts';

/** What sets a wash day apart from the usual one. */
export const setApart = ['treatment', 'protein', 'clarifying', 'moisture', 'other'] as const;
export type SetApart = (typeof setApart)[number];

export type RunDay = PlannedDay & {
  /** None on a usual wash day. */
  turns: SetApart[];
  answer: Answer;
  /** What speaks about that day by itself. */
  findings: Finding[];
  /** Products that surely hold protein. */
  doses: number;
};

export type Run = {
  days: RunDay[];
  /** The worst of its days. */
  answer: Answer;
  /** Days from one treatment to the next, at least and at most; absent with fewer than two. */
  between?: { least: number; most: number };
  /** Days the hair wants between two, where its tolerance is known. */
  wanted?: number;
  /** Doses of protein in thirty days. */
  dosesAMonth: number;
};

const month = 30;

/**
 * The wash days a routine really has, one after the other: steps that alternate come when they are due. Each day
 * is judged by what is done on it; the run is counted as a whole. Pure.
 */
export function runOf(input: WashDayInput, days: number): Run {
  const { routine, today } = input;
  const planned = plannedDays({ ...input, from: today, days });
  const steps = new Map(dayOf(input).steps.map((step) => [step.id, step]));
  const judged = new Map<string, Pick<RunDay, 'answer' | 'findings' | 'doses'>>();
  const run = planned.map((day): RunDay => {
    const done = day.steps.map((id) => steps.get(id)!);
    const key = day.steps.join('\n');
    const known = judged.get(key) ?? judge(input, day);
    judged.set(key, known);
    return { ...day, ...known, turns: turnsOf(done, input) };
  });
  const treated = run.filter(({ treatments }) => treatments.length > 0);
  const gaps = treated.slice(1).map(({ date }, at) => daysBetween(treated[at]!.date, date));
  const doses = run.reduce((sum, day) => sum + day.doses, 0);
  const span = Math.max(1, run.length * Math.max(1, Math.round(routine.washEvery)));
  return {
    days: run,
    answer: worstOf(run.flatMap(({ findings }) => findings)),
    ...(gaps.length > 0 && { between: { least: Math.min(...gaps), most: Math.max(...gaps) } }),
    ...(input.allowance?.numbers && {
      wanted: treatmentDays({ numbers: input.allowance.numbers, practice: input.practice }),
    }),
    dosesAMonth: Math.round((doses / span) * month),
  };
}

function judge(input: WashDayInput, { steps, date }: PlannedDay) {
  const routine = { ...input.routine, steps: input.routine.steps.filter(({ id }) => steps.includes(id)) };
  const { answer, findings, protein } = washDay({ ...input, routine, today: date });
  return { answer, findings, doses: protein.products.sure };
}

/** Only what does not come at every wash sets a day apart. */
function turnsOf(steps: readonly DayStep[], { practice }: WashDayInput): SetApart[] {
  const { strengthening, cleansing, followUp } = practice.washDay.kinds;
  const some = steps.filter(({ filled, cadence }) => filled && cadence.every !== 'wash');
  const turn = ({ kind, traits }: DayStep): SetApart => {
    if (strengthening.includes(kind)) return 'treatment';
    if (cleansing.includes(kind)) return traits.wash?.lifts ? 'clarifying' : 'other';
    if (traits.protein === 'yes') return 'protein';
    return followUp.includes(kind) ? 'moisture' : 'other';
  };
  const found = new Set(some.map(turn));
  return setApart.filter((each) => found.has(each));
}
