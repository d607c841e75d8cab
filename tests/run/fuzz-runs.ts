import { appendFileSync, existsSync, mkdirSync, readFileSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import fc from 'fast-check';

const inARound = 5000; // tries between two lines of progress
const root = join(import.meta.dirname, '../..');

/** Rounds that were tried with a seed, one line each: what an interrupted run goes on from. */
const doneWith = (seed: number) => join(root, `.cache/fuzz/${seed}.txt`);

/**
 * Holds a property of things drawn at random: `usual` times in `npm test`; in `npm run fuzz` as often as it is told, a
 * round after the other, each with a seed of its own. Rounds that went well are not tried again with the same seed.
 * @param name what is drawn
 */
export async function tried<T extends [unknown, ...unknown[]]>(
  name: string,
  property: fc.IProperty<T>,
  usual: number,
): Promise<void> {
  const [times, seed] = [Number(process.env.STRANDLINE_FUZZ), Number(process.env.STRANDLINE_FUZZ_SEED)];
  if (!times) return fc.assert(property, { numRuns: usual });
  const file = doneWith(seed);
  mkdirSync(dirname(file), { recursive: true });
  const before = new Set(existsSync(file) ? readFileSync(file, 'utf8').split('\n') : []);
  for (let from = 0; from < times; from += inARound) {
    const round = `${name} ${from}`;
    if (before.has(round)) continue;
    fc.assert(property, { numRuns: Math.min(inARound, times - from), seed: seed + from });
    if (times - from >= inARound) appendFileSync(file, `${round}\n`);
    writeSync(2, `${name}: ${Math.min(from + inARound, times)} of ${times}\n`);
    await new Promise(setImmediate); // the runner hears that we are there
  }
}
