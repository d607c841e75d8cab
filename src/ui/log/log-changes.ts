import type { LogEntry, Routine } from '../../core/wash-day/routine.ts';
import { productOf } from '../routine/day-input.ts';
import type { World } from '../world.ts';

/** The routine as it was done, frozen: names and labels as they are now, whatever becomes of the products. */
export const frozen = (
  world: World,
  { name, steps }: Routine,
  done: ReadonlySet<string>,
): LogEntry['done'] => ({
  name,
  steps: steps
    .filter(({ id }) => done.has(id))
    .map((step) => {
      const product = productOf(world, step.product);
      const label = product?.labels[0]?.text;
      return { ...step, ...(product && { productName: product.name }), ...(label && { label }) };
    }),
});

export async function keepEntry(world: World, entry: LogEntry, photo?: string | null): Promise<boolean> {
  const key = entry.photo ?? (photo ? world.newId() : undefined);
  const { photo: _, ...rest } = entry;
  const value: LogEntry = photo === null || key === undefined ? rest : { ...rest, photo: key };
  const { ok } = await world.change(
    { do: 'put', thing: 'log', value },
    ...(key !== undefined && photo !== undefined ? [{ do: 'photo', key, data: photo } as const] : []),
  );
  if (ok) world.say(world.t('log.kept'), true);
  return ok;
}

export async function removeEntry(world: World, entry: LogEntry): Promise<void> {
  const { ok } = await world.change(
    { do: 'remove', thing: 'log', id: entry.id },
    ...(entry.photo ? [{ do: 'photo', key: entry.photo, data: null } as const] : []),
  );
  if (ok) world.say(world.t('log.removed'), true);
}

/** Celsius as the reader writes it, and back. */
export const toUnits = (celsius: number, imperial: boolean) =>
  imperial ? Math.round((celsius * 9) / 5 + 32) : Math.round(celsius * 10) / 10;
export const toCelsius = (degrees: number, imperial: boolean) =>
  imperial ? Math.round(((degrees - 32) * 50) / 9) / 10 : degrees;
