import type { Finding } from '../../../judge/finding.ts';
import { addDays, daysBetween } from '../../days.ts';
import type { LogEntry } from '../../routine.ts';
import { daysBetweenTimes, washesApart } from '../cadence.ts';
import { type Day, type DayStep, finding, isKind, type Rule } from '../day.ts';

/** Do strengthening treatments come closer together than the allowance, as planned or as logged? */
export const treatmentsApart: Rule = {
  id: 'treatments-apart',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) =>
    step.filled && isKind(day, 'strengthening', step)
      ? `${step.kind} ${JSON.stringify(step.cadence)} ${step.traits.dose}`
      : '',
  softens: () => false,
  mayHelp: (before) => before !== '',
  ask(day) {
    const treatments = day.steps.filter((step) => step.filled && isKind(day, 'strengthening', step));
    return treatments.length === 0 ? [] : [...planned(treatments, day), ...logged(treatments, day)];
  },
};

/** Days that must lie between treatments: the allowance's, or about a week while the hair is not described. */
export const treatmentDays = (day: Pick<Day, 'numbers' | 'practice'>) =>
  day.numbers?.daysBetweenTreatments ?? day.practice.washDay.thresholds.treatmentDays;

/** The same for one treatment: far more than this hair takes at a wash stays away as much longer. */
export function treatmentDaysOf(step: DayStep, day: Day): number {
  const { strongTreatmentTimes: times } = day.practice.washDay.thresholds;
  const takes = Math.max(...day.hair.numbers.map(({ protein }) => protein.suits));
  const strong = !isKind(day, 'bond', step) && step.traits.dose > times * takes;
  return Math.ceil(treatmentDays(day) * (strong ? times : 1));
}

const tell = (
  answer: Finding['answer'],
  key: string,
  steps: DayStep[],
  values: Record<string, string | number>,
) => finding(treatmentsApart, answer, { key: `rules.treatments-apart.${key}`, values }, { steps });

function planned(treatments: DayStep[], day: Day): Finding[] {
  const protein = treatments.filter((step) => !isKind(day, 'bond', step));
  const bonds = treatments.filter((step) => isKind(day, 'bond', step));
  return [...proteinPlanned(protein, day), ...bondPlanned(bonds, day)];
}

/** Every one counts: two with rhythms of their own meet; those that take turns come closer than each alone. */
function proteinPlanned(treatments: DayStep[], day: Day): Finding[] {
  if (treatments.length === 0) return [];
  const days = Math.max(...treatments.map((step) => treatmentDaysOf(step, day)));
  const apart =
    treatments.length > 1
      ? washesApart(treatments.map(({ cadence }) => cadence)) * Math.max(1, day.washEvery)
      : daysBetweenTimes(treatments[0]!.cadence, day.washEvery);
  if (apart === 0) return [tell('does-not-suit', 'same-day', treatments, { n: treatments.length, days })];
  if (apart < days)
    return [
      {
        ...tell(apart < days / 2 ? 'does-not-suit' : 'with-care', 'too-close', treatments, {
          n: apart,
          days,
        }),
        extent: days / apart,
      },
    ];
  if (day.numbers) return [tell('suits', 'apart', treatments, { n: apart, days })];
  const most = Math.max(
    ...Object.values(day.practice.allowance.levels).map((level) => level.daysBetweenTreatments),
  );
  return apart >= most
    ? [tell('suits', 'apart', treatments, { n: apart, days: most })]
    : [
        {
          ...tell('cannot-tell', 'hair-unknown', treatments, { n: apart, days: most }),
          unknown: { key: 'rules.unknown.hair' },
        },
      ];
}

/** Bond care is no protein and may come oftener. */
function bondPlanned(bonds: DayStep[], day: Day): Finding[] {
  const days = day.practice.washDay.thresholds.bondDays;
  return bonds.flatMap((step) => {
    const apart = daysBetweenTimes(step.cadence, day.washEvery);
    return apart < days ? [tell('with-care', 'bond-often', [step], { n: apart, days })] : [];
  });
}

/** Dates of the log on which a strengthening treatment was done, newest first. */
export const treatmentDates = (log: readonly LogEntry[], day: Pick<Day, 'practice'>) =>
  [
    ...new Set(
      log
        .filter(({ done }) =>
          done.steps.some(({ kind }) => day.practice.washDay.kinds.strengthening.includes(kind)),
        )
        .map(({ date }) => date.slice(0, 10)),
    ),
  ].sort((a, b) => b.localeCompare(a));

function logged(treatments: DayStep[], day: Day): Finding[] {
  const [last, before] = treatmentDates(day.log, day).filter((date) => date <= day.today);
  if (!last) return [];
  const days = treatmentDays(day);
  const next = addDays(last, days);
  if (next <= day.today) return [];
  const values = { last, next, days, n: daysBetween(last, day.today) };
  const closeAlready = before !== undefined && daysBetween(before, last) < days;
  return [
    tell(
      closeAlready ? 'with-care' : 'suits',
      closeAlready ? 'logged-close' : 'wait-until',
      treatments,
      values,
    ),
  ];
}
