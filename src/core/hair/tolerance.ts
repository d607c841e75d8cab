import type { Said } from '../judge/finding.ts';
import type { AllowanceLevel, AllowancePractice } from '../judge/practice.ts';
import { daysBetween, newestFirst } from '../wash-day/days.ts';
import type { LogEntry } from '../wash-day/routine.ts';
import { dayFelt, type Felt } from './day-feel.ts';
import type { Allowance, Head } from './head.ts';
import { readStretch } from './stretch.ts';

/** From least to most protein. */
export const allowances = ['rarely', 'sparingly', 'some', 'regular', 'often'] as const;

export type AllowanceReason = {
  /** `hair`, `damage-bleach` …, `stretch`, `feel`: kept in `Head.setAside` when the user overrules it. */
  id: string;
  said: Said;
  /** Steps up (or down) the scale, before the sum is rounded; `hair` counts from `some`. */
  steps: number;
  setAside: boolean;
};

export type AllowanceReading = {
  /** Absent when thickness or porosity is not known and no level was set by hand. */
  level?: Allowance;
  numbers?: AllowanceLevel;
  /** What the answers alone come to, whatever was set by hand. */
  byReasons?: Allowance;
  /** Place on the scale before rounding, 0…4, with each level; and what all reasons but the hair itself add up to. */
  exact?: number;
  others: number;
  /** Where thickness or porosity is not told: the least and the most it can come to. */
  between?: { least: Allowance; most: Allowance };
  byHand: boolean;
  reasons: AllowanceReason[];
  /** What was not told, or too old to count. */
  unknown: Said[];
};

export type AllowanceContext = { today: string; log: readonly LogEntry[] };

const middle = allowances.indexOf('some');

/**
 * How much protein a head of hair welcomes, with its reasons line by line. Common practice throughout: no
 * peer-reviewed schedule for protein is known. Pure and total; `today` is an ISO date and `log` may hold
 * entries of other heads.
 */
export function allowanceOf(
  head: Head,
  practice: AllowancePractice,
  { today, log }: AllowanceContext,
): AllowanceReading {
  const lines: Omit<AllowanceReason, 'setAside'>[] = [];
  const unknown: Said[] = [];
  const { thickness, porosity } = head;
  if (thickness && porosity)
    lines.push({
      id: 'hair',
      said: { key: `hair.reason.${thickness}-${porosity}` },
      steps: allowances.indexOf(practice.base[thickness][porosity]) - middle,
    });
  if (!thickness) unknown.push({ key: 'hair.unknown.thickness' });
  if (!porosity) unknown.push({ key: 'hair.unknown.porosity' });
  lines.push(...damageLines(head, practice));
  if (!head.damage) unknown.push({ key: 'hair.unknown.damage' });
  else if (head.damage.kinds.length > 0) {
    if (!head.damage.length) unknown.push({ key: 'hair.unknown.damage-length' });
    if (!head.damage.recent) unknown.push({ key: 'hair.unknown.damage-recent' });
  }
  const stretch = stretchLine(head, practice, today);
  if (stretch.line) lines.push(stretch.line);
  if (stretch.unknown) unknown.push(stretch.unknown);
  const feel = feelLine(head, practice, today, log);
  if (feel) lines.push(feel);

  const reasons = lines.map((line) => ({ ...line, setAside: head.setAside.includes(line.id) }));
  const steps = (of: (reason: AllowanceReason) => boolean) =>
    reasons.filter((reason) => !reason.setAside && of(reason)).reduce((sum, reason) => sum + reason.steps, 0);
  const isDamage = ({ id }: AllowanceReason) => id.startsWith('damage-');
  // Halves round up: damage that is told is never without effect.
  const raised = Math.min(practice.damageAtMost, Math.floor(steps(isDamage) + 0.5));
  const others = steps((reason) => !isDamage(reason)) + raised;
  const levelAt = (at: number) => allowances[Math.max(0, Math.min(allowances.length - 1, at))]!;
  const byReasons = thickness && porosity ? levelAt(middle + others) : undefined;
  const level = head.allowanceByHand ?? byReasons;
  const unrounded = steps((reason) => !isDamage(reason)) + Math.min(practice.damageAtMost, steps(isDamage));
  const base = reasons.find(({ id }) => id === 'hair');
  const exact = head.allowanceByHand
    ? allowances.indexOf(head.allowanceByHand)
    : byReasons && Math.max(0, Math.min(allowances.length - 1, middle + unrounded));
  return {
    ...(level && { level, numbers: practice.levels[level] }),
    ...(exact !== undefined && { exact }),
    others: unrounded - (base && !base.setAside ? base.steps : 0),
    ...(byReasons
      ? { byReasons }
      : { between: rangeOf(head, practice, (base) => levelAt(allowances.indexOf(base) + others)) }),
    byHand: head.allowanceByHand !== undefined,
    reasons,
    unknown,
  };
}

/** Least and most over every answer that is not told. */
function rangeOf(
  { thickness, porosity, setAside }: Head,
  { base }: AllowancePractice,
  level: (base: Allowance) => Allowance,
) {
  const rows = thickness ? [base[thickness]] : Object.values(base);
  const bases = rows.flatMap((row) => (porosity ? [row[porosity]] : Object.values(row)));
  const levels = (setAside.includes('hair') ? (['some'] as const) : bases).map(level);
  const ranks = levels.map((each) => allowances.indexOf(each));
  return { least: allowances[Math.min(...ranks)]!, most: allowances[Math.max(...ranks)]! };
}

/** How much damage there is, in steps of the scale: all kinds, by length and age. */
export const damageOf = (damage: Head['damage'], practice: AllowancePractice): number =>
  damageLines({ damage }, practice).reduce((sum, { steps }) => sum + steps, 0);

// Length or age not told counts as the least of it: an answer left out never raises the allowance.
function damageLines({ damage }: { damage?: Head['damage'] }, practice: AllowancePractice) {
  if (!damage) return [];
  const length = practice.damageByLength[damage.length ?? 'ends'];
  const age = practice.damageByAge[damage.recent ?? 'longer'];
  return [...new Set(damage.kinds)].map((kind) => ({
    id: `damage-${kind}`,
    said: { key: `hair.reason.damage-${kind}` },
    steps: practice.damage[kind] * length * age,
  }));
}

/** The test that counts: the newest one, by date. */
export const newestStretch = (head: Pick<Head, 'stretch'>) => head.stretch.toSorted(newestFirst)[0];

function stretchLine(
  head: Head,
  practice: AllowancePractice,
  today: string,
): { line?: Omit<AllowanceReason, 'setAside'>; unknown?: Said } {
  const test = newestStretch(head);
  if (!test) return {};
  if (daysBetween(test.date, today) > practice.stretch.countsForDays)
    return { unknown: { key: 'hair.unknown.stretch-old', values: { days: practice.stretch.countsForDays } } };
  const { kind, why } = readStretch(test, practice.stretch);
  if (kind === 'cannot-tell') return { unknown: { key: `hair.unknown.stretch-${why}` } };
  return {
    line: {
      id: 'stretch',
      said: { key: `hair.reason.stretch-${kind}` },
      steps: kind === 'snaps' ? -1 : kind === 'overstretches' ? 1 : 0,
    },
  };
}

function feelLine(head: Head, practice: AllowancePractice, today: string, log: readonly LogEntry[]) {
  const { entries, atLeast, withinDays } = practice.feel;
  const days = log
    .filter(
      ({ head: of, date, feel }) =>
        of === head.id && daysBetween(date, today) <= withinDays && Object.keys(feel).length > 0,
    )
    .toSorted(newestFirst)
    .slice(0, entries);
  if (days.length < atLeast) return undefined;
  const felt = (how: Felt) => days.filter(({ feel }) => dayFelt(feel, practice.feel) === how).length;
  const stiff = felt('stiff');
  const limp = felt('limp');
  const values = { n: days.length, stiff, limp };
  const most = days.length / 2;
  if (stiff > most) return { id: 'feel', said: { key: 'hair.reason.feel-stiff', values }, steps: -1 };
  if (limp > most) return { id: 'feel', said: { key: 'hair.reason.feel-limp', values }, steps: 1 };
  return { id: 'feel', said: { key: 'hair.reason.feel-even', values }, steps: 0 };
}
