import type { Head } from '../core/hair/head.ts';
import type { Said } from '../core/judge/finding.ts';
import type { Remembered } from '../store/remembered.ts';
import type { Decided } from './knowing.ts';
import { type Making, momentOf } from './routines.ts';

export const newHead = (making: Making, name: string): Head => ({
  id: making.newId(),
  name,
  avoid: [],
  stretch: [],
  setAside: [],
  added: momentOf(making),
});

/** Keeps one head; a new one is the one in use from then on. */
export const keepHead = ({ heads }: Remembered, head: Head, say?: Said): Decided => ({
  changes: [
    { do: 'put', thing: 'heads', value: head },
    ...(heads.some(({ id }) => id === head.id)
      ? []
      : [{ do: 'set', settings: { headInUse: head.id } } as const]),
  ],
  ...(say && { say }),
});
