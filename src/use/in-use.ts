import type { Head } from '../core/hair/head.ts';
import { type AllowanceReading, allowanceOf } from '../core/hair/tolerance.ts';
import type { Routine } from '../core/wash-day/routine.ts';
import type { Remembered } from '../store/remembered.ts';
import type { Knowing } from './knowing.ts';

/** The head the reader has in use: the chosen one, else the first kept. */
export const headInUse = ({ heads, settings }: Pick<Remembered, 'heads' | 'settings'>): Head | undefined =>
  heads.find(({ id }) => id === settings.headInUse) ?? heads[0];

/** The routine in use: the chosen one where it is of that head, else the head's first. */
export function routineInUse(remembered: Remembered, head: Head | undefined): Routine | undefined {
  const of = remembered.routines.filter((each) => each.head === head?.id);
  return of.find(({ id }) => id === remembered.settings.routineInUse) ?? of[0];
}

/** How much protein a head of hair takes, with the reasons. */
export const allowanceFor = (
  { practice, today, remembered: { log } }: Omit<Knowing, 'reading'>,
  head: Head | undefined,
): AllowanceReading | undefined => head && allowanceOf(head, practice.allowance, { today, log });
