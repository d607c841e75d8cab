import type { StretchPractice } from '../judge/practice.ts';
import type { Range } from '../names/entry.ts';
import type { StretchTest } from './head.ts';

/**
 * What a stretch test says: `snaps` (stiff or brittle: too much protein or too little moisture), `overstretches`
 * (limp: the reverse), `springs-back` (balanced), `within` (broke where wet hair usually does), or that it
 * cannot be told, and why. Common practice; the regions of the curve are Robbins's (from memory).
 */
export type StretchReading = {
  kind: 'snaps' | 'overstretches' | 'springs-back' | 'within' | 'cannot-tell';
  /** Only with `cannot-tell`. */
  why?: 'lengths' | 'too-short' | 'too-gentle' | 'beyond-recovery';
  /** Percent of the length at rest, and by how much a ruler's error may move it. */
  extension?: number;
  extensionRange?: Range;
  /** Percent of the extension that came back; absent when the strand broke. */
  recovery?: number;
};

/** Extension of a strand in percent of its length at rest. Lengths in one unit, any. */
export const extensionOf = (rest: number, stretched: number) => (100 * (stretched - rest)) / rest;

/** Percent of the extension that came back after letting go, at most 100. Undefined where nothing was stretched. */
export function recoveryOf(rest: number, stretched: number, after: number): number | undefined {
  if (stretched <= rest) return undefined;
  return Math.min(100, (100 * (stretched - after)) / (stretched - rest));
}

/** Reads one test (lengths in millimetres). Never throws: lengths that cannot be are `cannot-tell`. */
export function readStretch(
  test: Pick<StretchTest, 'rest' | 'stretched' | 'after' | 'broke'>,
  practice: StretchPractice,
): StretchReading {
  const { rest, stretched, broke } = test;
  const error = practice.readingError;
  if (!(rest > 0) || !(stretched >= rest) || !Number.isFinite(stretched))
    return { kind: 'cannot-tell', why: 'lengths' };
  const extension = extensionOf(rest, stretched);
  const extensionRange = {
    min: Math.max(0, extensionOf(rest + error, Math.max(rest, stretched - error))),
    max: extensionOf(Math.max(error, rest - error), stretched + error),
  };
  const told = { extension, extensionRange };
  if (rest < practice.shortestRest) return { kind: 'cannot-tell', why: 'too-short', ...told };

  if (broke) {
    if (extension < practice.snapsBelow) return { kind: 'snaps', ...told };
    return { kind: extension >= practice.overstretchesFrom ? 'overstretches' : 'within', ...told };
  }
  if (extension >= practice.overstretchesFrom) return { kind: 'overstretches', ...told, ...back(test) };
  if (extension < practice.leastStretch) return { kind: 'cannot-tell', why: 'too-gentle', ...told };
  // A ruler's error may make the strand a little shorter than it was, not much.
  if (test.after === undefined || test.after > stretched || test.after < rest - 2 * error)
    return { kind: 'cannot-tell', why: 'lengths', ...told };
  const recovered = { ...told, ...back(test) };
  if (recovered.recovery! >= practice.recoversFrom) return { kind: 'springs-back', ...recovered };
  return extension > practice.recoverableTo
    ? { kind: 'cannot-tell', why: 'beyond-recovery', ...recovered }
    : { kind: 'overstretches', ...recovered };
}

const back = ({ rest, stretched, after }: Pick<StretchTest, 'rest' | 'stretched' | 'after'>) => {
  const recovery = after === undefined ? undefined : recoveryOf(rest, stretched, after);
  return recovery === undefined ? {} : { recovery };
};
