import { describe, expect, it } from 'vitest';
import { speaksAgainst } from '../../src/core/judge/finding.ts';
import { applyMoves } from '../../src/core/plan/moves.ts';
import { suggest } from '../../src/core/plan/suggest.ts';
import { fulfils } from '../../src/core/plan/wish.ts';
import { productKinds } from '../../src/core/product/product.ts';
import type { Reading } from '../../src/core/reading/reading.ts';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import {
  candidate,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  type Hand,
  hand,
  middling,
  practice,
  silk,
  softener,
  water,
  wheat,
} from './hand-read.ts';
import { bruteForce } from './plan/every-change.ts';
import { randomDay } from './random-day.ts';

const plain = hand([water, glycerin, fatty, softener]);
const mildWash = hand([water, glutamate]);
const proteinFree = hand([water, glycerin]);
const withSilk = hand([water, glycerin, silk]);
describe('the smallest change that settles a wash day', () => {
  it('swaps the one product that is too much', () => {
    const input = {
      ...day(
        [
          { kind: 'cleanser', of: mildWash },
          { kind: 'conditioner', of: plain },
          { kind: 'gel', of: hand([water, wheat]) },
        ],
        careful,
      ),
      candidates: [
        candidate('free-gel', 'gel', proteinFree),
        candidate('wheat-gel', 'gel', hand([water, wheat])),
      ],
    };
    const found = suggest(input);
    expect(found).toMatchObject({ answer: 'found', fewest: true });
    if (found.answer !== 'found') return;
    expect(found.suggestions[0]!.moves).toEqual([
      { do: 'swap', step: 's3', with: { product: 'free-gel', alternatives: [], owned: true } },
    ]);
    expect(found.suggestions[0]!.because[0]!.map(({ rule }) => rule)).toContain('too-much-protein');
    const routine = applyMoves(
      input.routine,
      found.suggestions[0]!.moves,
      practice.washDay.kinds.order,
      () => 'x',
    );
    const readings = new Map(input.readings).set('s3', proteinFree);
    expect(washDay({ ...input, routine, readings }).findings.filter(speaksAgainst)).toEqual([]);
  });

  it('never proposes what treats a sick scalp', () => {
    const medicine: Hand = { name: 'Selenium Sulfide', roles: ['active', 'medicated'] };
    const offered = (reading: Reading) =>
      suggest({
        ...day(
          [
            { kind: 'cleanser', of: mildWash },
            { kind: 'gel', of: hand([water, wheat]) },
          ],
          careful,
        ),
        candidates: [candidate('other-gel', 'gel', reading)],
      });
    expect(JSON.stringify(offered(proteinFree))).toContain('other-gel');
    expect(JSON.stringify(offered(hand([water, glycerin, medicine])))).not.toContain('other-gel');
  });

  it('adds the deep conditioner that a treatment lacks, in its place', () => {
    const input = {
      ...day(
        [
          { kind: 'protein-treatment', of: withSilk, cadence: { every: 'nth-wash', n: 4 } },
          { kind: 'cleanser', of: mildWash },
          { kind: 'leave-in', of: plain },
        ],
        middling,
      ),
      candidates: [
        candidate('mask', 'deep-conditioner', plain),
        candidate('silk-mask', 'deep-conditioner', withSilk),
      ],
    };
    const found = suggest(input);
    if (found.answer !== 'found') throw new Error(found.answer);
    expect(found.suggestions[0]!.moves).toMatchObject([
      { do: 'add', kind: 'deep-conditioner', with: { product: 'mask' } },
    ]);
    const routine = applyMoves(
      input.routine,
      found.suggestions[0]!.moves,
      practice.washDay.kinds.order,
      () => 'x',
    );
    expect(routine.steps.map(({ kind }) => kind)).toEqual([
      'protein-treatment',
      'cleanser',
      'deep-conditioner',
      'leave-in',
    ]);
  });

  it('spaces a treatment that comes too often', () => {
    const input = {
      ...day(
        [
          { kind: 'protein-treatment', of: withSilk },
          { kind: 'cleanser', of: mildWash },
          { kind: 'deep-conditioner', of: plain },
          { kind: 'gel', of: withSilk },
        ],
        middling,
      ),
      candidates: [],
    };
    const found = suggest(input);
    expect(found.answer === 'found' && found.suggestions[0]!.moves).toEqual([
      { do: 'space', step: 's1', cadence: { every: 'nth-wash', n: 2 } },
    ]);
  });

  it('takes what is on hand before what is only considered, and names its likes', () => {
    const input = {
      ...day(
        [
          { kind: 'cleanser', of: mildWash },
          { kind: 'conditioner', of: plain },
          { kind: 'gel', of: hand([water, wheat]) },
        ],
        careful,
      ),
      candidates: [
        candidate('considered', 'gel', proteinFree, false),
        candidate('owned', 'gel', proteinFree),
        candidate(
          'owned-too',
          'gel',
          hand([water, glycerin, { name: 'Panthenol', moisture: ['humectant'] }]),
        ),
      ],
    };
    const found = suggest(input);
    if (found.answer !== 'found') throw new Error(found.answer);
    expect(found.suggestions[0]!.moves).toEqual([
      {
        do: 'swap',
        step: 's3',
        with: { product: 'owned', alternatives: ['owned-too', 'considered'], owned: true },
      },
    ]);
  });

  it('says so when nothing on hand settles it, and which kind of product would', () => {
    const input = {
      ...day([{ kind: 'conditioner', of: plain }], middling),
      candidates: [candidate('free-gel', 'gel', proteinFree)],
    };
    const found = suggest(input);
    expect(found).toMatchObject({ answer: 'none', complete: true });
    if (found.answer !== 'none') return;
    const move = found.wanted[0]!.moves[0]!;
    const wish = 'with' in move && 'wish' in move.with ? move.with.wish : undefined;
    expect(wish).toMatchObject({ kind: 'cleanser', protein: 'free', lifts: true });
    expect(fulfils(mildWash, 'cleanser', wish!, practice)).toBe('yes');
    expect(fulfils(plain, 'cleanser', wish!, practice)).toBe('no');
    expect(fulfils(undefined, 'cleanser', wish!, practice)).toBe('maybe');
    expect(fulfils(mildWash, 'conditioner', wish!, practice)).toBe('no');
  });

  it('leaves a settled day alone', () => {
    const input = {
      ...day(
        [
          { kind: 'cleanser', of: mildWash },
          { kind: 'conditioner', of: plain },
          { kind: 'gel', of: proteinFree },
        ],
        careful,
      ),
      candidates: [],
    };
    expect(suggest(input)).toEqual({ answer: 'settled' });
  });
});

it('tells on the way what share of the days it may look at it has looked at', () => {
  const told = Array.from({ length: 40 }, (_, index) => {
    const shares: number[] = [];
    const found = suggest(randomDay(index + 1, 5, 12), (share) => shares.push(share));
    return { shares, tried: found.answer === 'settled' ? 0 : found.tried };
  });
  for (const { shares, tried } of told) {
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
    if (tried > 100) expect(shares.length).toBeGreaterThan(0);
  }
  expect(told.filter(({ tried }) => tried > 100).length).toBeGreaterThan(3);
});

describe('against brute force over every set of changes', () => {
  it.each(Array.from({ length: 60 }, (_, index) => index + 1))('wash day %i', (seed) => {
    const input = randomDay(seed, 3 + (seed % 2), 5);
    const found = suggest(input);
    const least = bruteForce(input, 3);
    if (found.answer === 'settled') expect(least).toBe(0);
    else if (found.answer === 'found') {
      const size = found.suggestions[0]!.moves.length;
      expect(least ?? size).toBe(size);
      if (least === undefined) expect(size).toBeGreaterThan(3);
    } else {
      expect(least).toBeUndefined();
      if (!found.complete) expect(found.upTo).toBeGreaterThanOrEqual(3);
    }
  });

  it('meets days of every size, so the comparison says something', () => {
    const sizes = new Set(
      Array.from({ length: 60 }, (_, index) => {
        const found = suggest(randomDay(index + 1, 3 + ((index + 1) % 2), 5));
        return found.answer === 'found' ? found.suggestions[0]!.moves.length : found.answer;
      }),
    );
    expect([1, 2, 3].every((size) => sizes.has(size))).toBe(true);
    expect(productKinds.length).toBe(17);
  });
});
