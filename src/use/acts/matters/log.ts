import type { LogEntry, Routine } from '../../../core/wash-day/routine.ts';
import type { Remembered } from '../../../store/remembered.ts';
import type { Decided } from '../../knowing.ts';
import { productById } from './products.ts';

/** The routine as it was done, frozen: names and labels as they are now, whatever becomes of the products. */
export const frozen = (
  remembered: Pick<Remembered, 'products'>,
  { name, steps }: Routine,
  done: ReadonlySet<string>,
): LogEntry['done'] => ({
  name,
  steps: steps
    .filter(({ id }) => done.has(id))
    .map((step) => {
      const product = productById(remembered, step.product);
      const label = product?.labels[0]?.text;
      return { ...step, ...(product && { productName: product.name }), ...(label && { label }) };
    }),
});

/** Keeps a wash day. A `photo` is its picture as a data URL, null to take it away, undefined to leave it. */
export function keepEntry(entry: LogEntry, photo: string | null | undefined, newKey: string): Decided {
  const key = entry.photo ?? (photo ? newKey : undefined);
  const { photo: _, ...rest } = entry;
  const value: LogEntry = photo === null || key === undefined ? rest : { ...rest, photo: key };
  return {
    changes: [
      { do: 'put', thing: 'log', value },
      ...(key !== undefined && photo !== undefined ? [{ do: 'photo', key, data: photo } as const] : []),
    ],
    say: { key: 'log.kept' },
  };
}

export const removeEntry = ({ id, photo }: LogEntry): Decided => ({
  changes: [
    { do: 'remove', thing: 'log', id },
    ...(photo ? [{ do: 'photo', key: photo, data: null } as const] : []),
  ],
  say: { key: 'log.removed' },
});
