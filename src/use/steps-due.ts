import { plannedDays } from '../core/wash-day/calendar.ts';
import type { Routine } from '../core/wash-day/routine.ts';
import { rememberedAllowance } from './in-use.ts';
import type { Knowing } from './knowing.ts';

/**
 * Ids of the steps that are due if this routine's hair is washed on a day (ISO date), by what was logged before it;
 * steps only done now and then by choice are left out.
 */
export function stepsDue(knowing: Omit<Knowing, 'reading'>, routine: Routine, date: string): string[] {
  const { practice, remembered } = knowing;
  const head = remembered.heads.find(({ id }) => id === routine.head);
  const [day] = plannedDays({
    routine,
    log: remembered.log.filter((entry) => entry.date.slice(0, 10) < date),
    allowance: rememberedAllowance(knowing, head),
    practice,
    from: date,
    days: Math.max(1, Math.round(routine.washEvery)) + 1,
    today: date,
  });
  const due = routine.steps.filter(({ id, optional }) => !optional && (!day || day.steps.includes(id)));
  return due.map(({ id }) => id);
}
