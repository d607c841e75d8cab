import type { RememberedParts } from '../../src/store/parts.ts';

type Early = { remembered?: Promise<RememberedParts> | undefined };

const world = globalThis as { [key: symbol]: Early | undefined };
const key = Symbol.for('strandline early');
world[key] ??= {};

/** What `early.js` asked of the background before the panel's own files were read. */
export const early: Early = world[key];

/** What is remembered as it was asked for then, once; the store may have changed before anybody listened. */
export function takeEarly(): Promise<RememberedParts> | undefined {
  const { remembered } = early;
  early.remembered = undefined;
  return remembered;
}
