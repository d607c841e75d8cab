import type { Head } from '../core/hair/head.ts';
import { type AllowanceReading, allowanceOf } from '../core/hair/tolerance.ts';
import type { LogEntry, Routine } from '../core/wash-day/routine.ts';
import type { Remembered } from '../store/remembered.ts';
import type { Knowing } from './knowing.ts';

/** The head the user has in use: the chosen one, else the first kept. */
export const headInUse = ({ heads, settings }: Pick<Remembered, 'heads' | 'settings'>): Head | undefined =>
  heads.find(({ id }) => id === settings.headInUse) ?? heads[0];

/** The routine in use: the chosen one where it is of that head, else the head's first. */
export function routineInUse(
  remembered: Pick<Remembered, 'routines' | 'settings'>,
  head: Head | undefined,
): Routine | undefined {
  const of = remembered.routines.filter((each) => each.head === head?.id);
  return of.find(({ id }) => id === remembered.settings.routineInUse) ?? of[0];
}

/** What was worked out of one log, which may be long: asked for every product there is. */
const worked = new WeakMap<LogEntry[], { asked: unknown[]; allowance: AllowanceReading }>();

/** How much protein a head takes by what is remembered, with the reasons; worked out once for each log. */
export function rememberedAllowance(
  { practice, today, remembered: { log } }: Omit<Knowing, 'reading'>,
  head: Head | undefined,
): AllowanceReading | undefined {
  if (!head) return undefined;
  const asked = [head, practice.allowance, today];
  const before = worked.get(log);
  if (before?.asked.every((each, at) => each === asked[at])) return before.allowance;
  const allowance = allowanceOf(head, practice.allowance, { today, log });
  worked.set(log, { asked, allowance });
  return allowance;
}
