import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { extensionOf, readStretch, recoveryOf, type StretchReading } from '../../src/core/hair/stretch.ts';

const read = (rest: number, stretched: number, after?: number) =>
  readStretch(
    { rest, stretched, broke: after === undefined, ...(after !== undefined && { after }) },
    practice.allowance.stretch,
  );

describe('arithmetic of the stretch test', () => {
  // Worked by hand: 100 mm pulled to 130 mm is 30 % extension; back at 103 mm, 27 of 30 mm recovered = 90 %.
  it.each([
    [100, 130, 103, 30, 90],
    [50, 75, 50, 50, 100],
    [80, 100, 90, 25, 50],
    [60, 60, 60, 0, undefined],
    [100, 120, 99, 20, 100], // a ruler's error: never more than all of it
  ])('%d mm to %d mm, back at %d mm', (rest, stretched, after, extension, recovery) => {
    expect(extensionOf(rest, stretched)).toBeCloseTo(extension, 10);
    if (recovery === undefined) expect(recoveryOf(rest, stretched, after)).toBeUndefined();
    else expect(recoveryOf(rest, stretched, after)).toBeCloseTo(recovery, 10);
  });

  it('does not depend on the unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 1, max: 200 }), (rest, more) => {
        expect(extensionOf(rest / 25.4, (rest + more) / 25.4)).toBeCloseTo(extensionOf(rest, rest + more), 8);
      }),
    );
  });
});

// Yield region to 25–30 %, wet break about 55–65 %: Robbins, from memory. The readings are common practice.
describe('reading', () => {
  it.each<[number, number, number | undefined, StretchReading['kind'], StretchReading['why']?]>([
    [100, 110, undefined, 'snaps'],
    [100, 129, undefined, 'snaps'],
    [100, 130, undefined, 'within'],
    [100, 160, undefined, 'within'],
    [100, 165, undefined, 'overstretches'],
    [100, 170, 120, 'overstretches'],
    [100, 125, 101, 'springs-back'],
    [100, 140, 102, 'springs-back'],
    [100, 125, 112, 'overstretches'],
    [100, 140, 125, 'cannot-tell', 'beyond-recovery'],
    [100, 108, 100, 'cannot-tell', 'too-gentle'],
    [10, 13, 10, 'cannot-tell', 'too-short'],
    [100, 90, undefined, 'cannot-tell', 'lengths'],
    [100, 125, 130, 'cannot-tell', 'lengths'],
    [100, 125, 80, 'cannot-tell', 'lengths'],
    [0, 10, undefined, 'cannot-tell', 'lengths'],
    [Number.NaN, 10, undefined, 'cannot-tell', 'lengths'],
    [100, Number.POSITIVE_INFINITY, undefined, 'cannot-tell', 'lengths'],
  ])('%d mm to %d mm, after %s → %s', (rest, stretched, after, kind, why) => {
    const reading = read(rest, stretched, after);
    expect(reading.kind).toBe(kind);
    expect(reading.why).toBe(why);
  });

  it('the range of a ruler holds the point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 0, max: 300 }), (rest, more) => {
        const { extension, extensionRange } = read(rest, rest + more);
        expect(extensionRange!.min).toBeLessThanOrEqual(extension!);
        expect(extensionRange!.max).toBeGreaterThanOrEqual(extension!);
      }),
    );
  });
});
