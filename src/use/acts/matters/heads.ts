import type { Head } from '../../../core/hair/head.ts';
import type { Said } from '../../../core/judge/finding.ts';
import type { Remembered } from '../../../store/remembered.ts';
import type { Decided } from '../../knowing.ts';
import { type Making, momentOf } from './routines.ts';

export const newHead = (making: Making, name: string): Head => ({
  id: making.newId(),
  name,
  avoid: [],
  stretch: [],
  setAside: [],
  added: momentOf(making),
});

/** Keeps one head; the first is in use from then on. Of any later one the answers stay for whom they were. */
export const keepHead = ({ heads }: Remembered, head: Head, say?: Said): Decided => ({
  changes: [
    { do: 'put', thing: 'heads', value: head },
    ...(heads.length > 0 ? [] : [{ do: 'set', settings: { headInUse: head.id } } as const]),
  ],
  ...(say && { say }),
});

/** Removes a head with its routines and log in one change, so that one undo brings all of it back. */
export const removeHead = ({ routines, log }: Remembered, { id, name }: Head): Decided => ({
  changes: [
    { do: 'remove', thing: 'heads', id },
    ...routines
      .filter((routine) => routine.head === id)
      .map((routine) => ({ do: 'remove', thing: 'routines', id: routine.id }) as const),
    ...log
      .filter((entry) => entry.head === id)
      .map((entry) => ({ do: 'remove', thing: 'log', id: entry.id }) as const),
  ],
  say: { key: 'hair.removed', values: { name } },
});
