import type { AllowanceLevel, Practice } from '../judge/practice.ts';
import { addDays, daysBetween } from './days.ts';
import type { LogEntry, Routine, Step } from './routine.ts';
import { alwaysComesWith } from './rules/cadence.ts';
import { treatmentDates, treatmentDays } from './rules/protein/treatments-apart.ts';
import { countOfNext, isTurn, names, takesTurns } from './turns.ts';

export type PlannedDay = {
  /** ISO date. */
  date: string;
  /** Ids of the steps that are due, in routine order. */
  steps: string[];
  /** Of these, strengthening treatments. */
  treatments: string[];
  /** Of these, deep conditioners that come along because of a treatment. */
  followUps: string[];
  /** Treatments that would be due by their cadence but come too early for the allowance. */
  putOff: string[];
};

export type CalendarInput = {
  routine: Routine;
  log: readonly LogEntry[];
  allowance?: { numbers?: AllowanceLevel } | undefined;
  practice: Practice;
  /** First day shown, ISO date, and how many days. */
  from: string;
  days: number;
  today: string;
};

/**
 * Wash days by cadence, counted on from the last one logged (or from today). A strengthening treatment is
 * placed on the first wash day on which it is due and the allowance's days lie between it and the last one,
 * one treatment a day; the deep conditioner that follows it comes along. Steps that take turns keep theirs: one
 * that is put off comes late that once, as a turn that moved would fall on the other's from then on. Pure; dates
 * are ISO.
 */
export function plannedDays(input: CalendarInput): PlannedDay[] {
  const { routine, practice, from, today } = input;
  const wash = Math.max(1, Math.round(routine.washEvery));
  const log = input.log
    .filter(({ head, date }) => head === routine.head && date.slice(0, 10) <= today)
    .toSorted((a, b) => a.date.localeCompare(b.date));
  const lastWash = log.at(-1)?.date.slice(0, 10);
  // The next wash is never in the past: who is late washes today.
  const next = lastWash ? addDays(lastWash, wash) : today;
  const first = [next, today].sort()[1]!;
  const end = addDays(from, input.days);
  const apart = treatmentDays({ numbers: input.allowance?.numbers, practice });
  let lastTreatment = treatmentDates(log, { practice })[0];
  const done = new Map(routine.steps.map((step) => [step.id, lastDone(step, routine.steps, log)]));
  const turning: ReadonlySet<Step> = new Set(routine.steps.filter((step) => takesTurns(step, routine.steps)));
  let count = countOfNext(routine.steps, log);
  let late = new Set<Step>();
  const planned: PlannedDay[] = [];
  for (let date = first; date < end; date = addDays(date, wash)) {
    const due = routine.steps.filter((step) =>
      turning.has(step)
        ? late.has(step) || isTurn(step.cadence, count)
        : isDue(step, done.get(step.id), date, wash),
    );
    const wanted = due.filter(({ kind }) => practice.washDay.kinds.strengthening.includes(kind));
    const free = !lastTreatment || daysBetween(lastTreatment, date) >= apart;
    // Of several treatments due on one day, the one that waited longest.
    const treatment = free
      ? wanted.toSorted((a, b) => (done.get(a.id)?.date ?? '').localeCompare(done.get(b.id)?.date ?? ''))[0]
      : undefined;
    const followUps = treatment ? followUpsOf(treatment, due, input) : [];
    const steps = routine.steps.filter(
      (step) =>
        step === treatment || followUps.includes(step) || (due.includes(step) && !wanted.includes(step)),
    );
    const putOff = wanted.filter((step) => step !== treatment);
    late = new Set(putOff);
    count++;
    if (treatment) lastTreatment = date;
    for (const step of routine.steps) {
      const times = done.get(step.id);
      if (steps.includes(step)) done.set(step.id, { date, washes: 0 });
      else if (times) times.washes++;
    }
    const ids = (which: readonly Step[]) => which.map(({ id }) => id);
    if (date >= from)
      planned.push({
        date,
        steps: ids(steps),
        treatments: treatment ? [treatment.id] : [],
        followUps: ids(followUps),
        putOff: ids(putOff),
      });
  }
  return planned;
}

type LastDone = { date: string; washes: number } | undefined;

/** When a step was last logged, and washes since. */
function lastDone(step: Step, steps: readonly Step[], log: readonly LogEntry[]): LastDone {
  const at = log.findLastIndex((entry) => names(entry, step, steps));
  return at < 0 ? undefined : { date: log[at]!.date.slice(0, 10), washes: log.length - 1 - at };
}

function isDue({ cadence }: Step, last: LastDone, date: string, wash: number): boolean {
  if (cadence.every === 'wash' || !last) return true;
  if (cadence.every === 'nth-wash') return last.washes + 1 >= cadence.n;
  // Steps are done on wash days only: the first one on or after the day.
  return daysBetween(last.date, date) >= Math.ceil(cadence.n / wash) * wash;
}

/** What follows a treatment that day: what always does, else what is due anyway, else the first is brought along. */
function followUpsOf(treatment: Step, due: readonly Step[], { routine, practice }: CalendarInput): Step[] {
  const after = routine.steps
    .slice(routine.steps.indexOf(treatment) + 1)
    .filter(({ kind }) => practice.washDay.kinds.followUp.includes(kind));
  const always = after.filter((step) => alwaysComesWith(step.cadence, treatment.cadence));
  const coming = always.length > 0 ? always : after.filter((step) => due.includes(step));
  return coming.length > 0 ? coming : after.slice(0, 1);
}
