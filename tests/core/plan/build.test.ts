import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../../dictionary/index.ts';
import { practice } from '../../../dictionary/practice.ts';
import type { Head } from '../../../src/core/hair/head.ts';
import { allowanceOf } from '../../../src/core/hair/tolerance.ts';
import { createLookup } from '../../../src/core/names/lookup.ts';
import { beginnings, dayStepsOf } from '../../../src/core/plan/build/bound.ts';
import { type BuildInput, buildDay, building } from '../../../src/core/plan/build/build.ts';
import { carrierOf } from '../../../src/core/plan/build/carrier.ts';
import { type BuildChoice, choicesFor } from '../../../src/core/plan/build/choices.ts';
import { costOfDay } from '../../../src/core/plan/build/cost.ts';
import { slotsOf } from '../../../src/core/plan/build/pins.ts';
import { branches } from '../../../src/core/plan/build/search.ts';
import type { Candidate } from '../../../src/core/plan/suggest.ts';
import { fulfils } from '../../../src/core/plan/wish.ts';
import { type ProductKind, usualUse } from '../../../src/core/product/product.ts';
import { readLabel } from '../../../src/core/reading/reading.ts';
import { dayOf } from '../../../src/core/wash-day/add-up.ts';
import { plannedDays } from '../../../src/core/wash-day/calendar.ts';
import type { Step } from '../../../src/core/wash-day/routine.ts';
import { randomDay, seeded } from '../random-day.ts';
import { madeCandidates } from './made-candidates.ts';

// The plans are held against every day there is (brute force); the labels are invented.
const lookup = createLookup(entries, patterns, limits);
const labels: [ProductKind, string][] = [
  ['cleanser', 'Aqua, Sodium Laureth Sulfate, Cocamidopropyl Betaine, Sodium Chloride, Parfum'],
  ['cleanser', 'Aqua, Decyl Glucoside, Coco-Betaine, Glycerin, Panthenol, Citric Acid'],
  ['cleanser', 'Aqua, Cetearyl Alcohol, Behentrimonium Chloride, Cocamidopropyl Betaine, Glycerin'],
  ['conditioner', 'Aqua, Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Dimethicone, Parfum'],
  ['conditioner', 'Aqua, Cetyl Alcohol, Cetrimonium Chloride, Hydrolyzed Keratin, Panthenol'],
  [
    'deep-conditioner',
    'Aqua, Cetearyl Alcohol, Butyrospermum Parkii Butter, Behentrimonium Methosulfate, Glycerin',
  ],
  [
    'deep-conditioner',
    'Aqua, Cetearyl Alcohol, Hydrolyzed Wheat Protein, Behentrimonium Chloride, Cocos Nucifera Oil',
  ],
  ['protein-treatment', 'Aqua, Hydrolyzed Collagen, Hydrolyzed Keratin, Magnesium Sulfate, Phenoxyethanol'],
  ['leave-in', 'Aqua, Glycerin, Hydrolyzed Silk, Cetrimonium Chloride, Polyquaternium-11, Panthenol'],
  ['leave-in', 'Aqua, Glycerin, Behentrimonium Chloride, Aloe Barbadensis Leaf Juice, Panthenol'],
  [
    'cream',
    'Aqua, Butyrospermum Parkii Butter, Cocos Nucifera Oil, Cetearyl Alcohol, Hydrolyzed Wheat Protein',
  ],
  ['cream', 'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Chloride, Parfum'],
  ['gel', 'Aqua, PVP, Carbomer, Hydrolyzed Wheat Protein, Glycerin, Phenoxyethanol'],
  ['gel', 'Aqua, Linum Usitatissimum Seed Extract, Xanthan Gum, Glycerin, Phenoxyethanol'],
];
const all = madeCandidates(labels, lookup);
const today = '2026-01-01';

function inputFor(head: Partial<Head>, candidates: readonly Candidate[], washEvery: number): BuildInput {
  const whole = {
    id: 'h',
    name: 'Wren',
    avoid: [],
    stretch: [],
    setAside: [],
    added: today,
    ...head,
  } as Head;
  return {
    head: whole,
    allowance: allowanceOf(whole, practice.allowance, { today, log: [] }),
    practice,
    log: [],
    today,
    routine: { id: 'r', head: 'h', name: 'day', steps: [], added: today, washEvery },
    candidates,
  };
}
const heads = fc.record({
  thickness: fc.constantFrom('fine' as const, 'medium' as const, 'coarse' as const),
  porosity: fc.constantFrom('low' as const, 'medium' as const, 'high' as const),
});
const some = fc.subarray(all, { minLength: 1, maxLength: 8 });
const rhythm = fc.constantFrom(2, 4, 7);

/** What each carrier's cheapest day costs: every day of these products is made and asked. */
function bruteForce(input: BuildInput): Map<string, number> {
  const empty = dayOf({ ...input, readings: new Map() });
  const { choices } = choicesFor(
    input.candidates,
    empty,
    { ...input, washEvery: empty.washEvery },
    practice.plan,
  );
  let days: { steps: typeof empty.steps; worth: number }[] = [{ steps: [], worth: 0 }];
  for (const kind of practice.washDay.kinds.order)
    days = days.flatMap((day) => [
      day,
      ...(choices.get(kind) ?? []).map(({ step, worth }) => ({
        steps: [...day.steps, step],
        worth: day.worth + worth,
      })),
    ]);
  const least = new Map<string, number>();
  for (const { steps, worth } of days) {
    const carrier = carrierOf({ steps });
    const cost = costOfDay({ ...empty, steps }, practice.plan) + worth;
    least.set(carrier, Math.min(cost, least.get(carrier) ?? Number.POSITIVE_INFINITY));
  }
  return least;
}

describe('a built day', () => {
  it('is the best of all days there are, by the rules: 150 cases beside brute force', () => {
    let others = 0;
    fc.assert(
      fc.property(heads, some, rhythm, (head, candidates, washEvery) => {
        const input = inputFor(head, candidates, washEvery);
        const [plan, ...more] = buildDay(input).plans;
        const least = bruteForce(input);
        expect(plan!.best).toBe(true);
        expect(plan!.cost).toBeCloseTo(Math.min(...least.values()), 9);
        for (const other of more.filter(({ best }) => best)) {
          others++;
          expect(other.cost).toBeCloseTo(least.get(other.carrier)!, 9);
        }
      }),
      { numRuns: 150 },
    );
    expect(others).toBeGreaterThan(50);
  });

  it.each([30, 40])(
    'of %i products: no day of one change is better, nor any that is drawn at random',
    (n) => {
      let proven = 0;
      for (let seed = 1; seed <= 5; seed++) {
        const input = randomDay(seed, 8, n);
        const empty = dayOf({ ...input, routine: { ...input.routine, steps: [] } });
        const { order } = practice.washDay.kinds;
        const { choices } = choicesFor(
          input.candidates,
          empty,
          { ...input, washEvery: empty.washEvery },
          practice.plan,
        );
        const [plan] = buildDay(input).plans;
        if (!plan!.best) continue;
        proven++;
        const used = new Set(plan!.steps.map(({ product }) => product));
        const kinds = order.filter((kind) => choices.has(kind));
        const cost = (taken: ReadonlyMap<ProductKind, BuildChoice | undefined>) => {
          const chosen = order.flatMap((kind) => taken.get(kind) ?? []);
          const steps = chosen.map(({ step }) => step);
          return chosen.reduce(
            (sum, { worth }) => sum + worth,
            costOfDay({ ...empty, steps }, practice.plan),
          );
        };
        const own = new Map(
          kinds.map((kind) => [kind, choices.get(kind)!.find(({ step }) => used.has(step.product))]),
        );
        expect(cost(own)).toBeCloseTo(plan!.cost, 9);
        for (const kind of kinds)
          for (const option of [undefined, ...choices.get(kind)!])
            expect(cost(new Map([...own, [kind, option]]))).toBeGreaterThanOrEqual(plan!.cost - 1e-9);
        const next = seeded(seed);
        for (let tries = 0; tries < 200; tries++) {
          const drawn = kinds.map((kind) => {
            const options = [undefined, ...choices.get(kind)!];
            return [kind, options[Math.floor(next() * options.length)]] as const;
          });
          expect(cost(new Map(drawn))).toBeGreaterThanOrEqual(plan!.cost - 1e-9);
        }
      }
      expect(proven).toBeGreaterThan(3);
    },
  );

  it('tells on the way how far it is, and never gets worse', () => {
    const input = randomDay(3, 8, 40);
    let [share, cost, looks] = [0, Number.POSITIVE_INFINITY, 0];
    for (const at of building(input)) {
      expect(at.share).toBeGreaterThanOrEqual(share);
      expect(at.share).toBeLessThanOrEqual(1.001);
      share = at.share;
      if (looks++ % 500 > 0) continue;
      const [plan] = at.soFar().plans;
      if (!plan) continue;
      expect(plan.cost).toBeLessThanOrEqual(cost + 1e-9);
      cost = plan.cost;
    }
    expect(buildDay(input).plans[0]!.cost).toBeLessThanOrEqual(cost);
  });

  it('begun, costs no less than its bound, however it goes on', () => {
    const names = fc.constantFrom<Partial<Head>>(
      {},
      { thickness: 'fine' },
      { thickness: 'coarse', porosity: 'low', damage: { kinds: [] } },
    );
    fc.assert(
      fc.property(
        names,
        fc.integer({ min: 1, max: 500 }),
        fc.infiniteStream(fc.nat(40)),
        (head, seed, draw) => {
          const { candidates } = randomDay(seed, 4, 24);
          const input = inputFor(head, candidates, 7);
          const empty = dayOf({ ...input, readings: new Map() });
          const { choices } = choicesFor(candidates, empty, input, practice.plan);
          const slots = slotsOf(choices, {}, empty);
          const { root, settle } = beginnings(slots, empty, practice.plan);
          const bounds: number[] = [];
          let begun = root;
          for (const options of slots) {
            bounds.push(begun.least);
            begun = settle(begun, options[draw.next().value! % options.length]);
          }
          const steps = dayStepsOf(begun.taken, empty);
          const worth = begun.taken.reduce((sum, option) => sum + (option?.worth ?? 0), 0);
          expect(begun.least).toBeCloseTo(worth + costOfDay({ ...empty, steps }, practice.plan), 9);
          for (const bound of bounds) expect(bound).toBeLessThanOrEqual(begun.least + 1e-9);
        },
      ),
      { numRuns: 600 },
    );
  });

  it('keeps what the person settled', () => {
    fc.assert(
      fc.property(
        heads,
        some,
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 5, max: 40 }),
        (head, candidates, stepsAtMost, minutesAtMost) => {
          const input = inputFor(head, candidates, 7);
          const { choices } = choicesFor(
            candidates,
            dayOf({ ...input, readings: new Map() }),
            input,
            practice.plan,
          );
          const stays = [...choices.values()].flat()[0]?.step.product;
          const { plans } = buildDay({
            ...input,
            pins: { stepsAtMost, minutesAtMost, without: ['cream'], ...(stays && { stays: [stays] }) },
          });
          for (const { steps, minutes } of plans) {
            expect(minutes).toBeLessThanOrEqual(minutesAtMost);
            expect(steps.length).toBeLessThanOrEqual(stepsAtMost);
            expect(steps.some(({ kind }) => kind === 'cream')).toBe(false);
            const pinned = stays && candidates.find(({ product }) => product === stays)!;
            if (pinned && pinned.kind !== 'cream')
              expect(steps.map(({ product }) => product)).toContain(stays);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('costs no more a wash than was settled, by a sum of its own; what comes seldom costs its part', () => {
    const price = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 14, maxLength: 14 });
    fc.assert(
      fc.property(heads, some, price, fc.integer({ min: 0, max: 20 }), (head, candidates, prices, atMost) => {
        const of = new Map(all.map(({ product }, at) => [product, prices[at]!]));
        const { plans } = buildDay({ ...inputFor(head, candidates, 4), pins: { price: { of, atMost } } });
        expect(plans.length).toBeGreaterThan(0);
        for (const { steps } of plans) {
          let spent = 0;
          // As many washes as bring every rhythm round, each paid for.
          const nth = (at: number) => {
            const { cadence } = steps[at]!;
            return cadence.every === 'nth-wash' ? cadence.n : 1;
          };
          const washes = steps.reduce((product, _, at) => product * nth(at), 1);
          for (let wash = 0; wash < washes; wash++)
            for (const [at, { product }] of steps.entries())
              if (wash % nth(at) === 0) spent += of.get(product!)!;
          expect(spent / washes).toBeLessThanOrEqual(atMost + 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('invents nothing: every step holds a product on hand, and no product does two', () => {
    fc.assert(
      fc.property(heads, some, (head, candidates) => {
        for (const { steps } of buildDay(inputFor(head, candidates, 7)).plans) {
          const used = steps.map(({ product }) => product);
          expect(new Set(used).size).toBe(used.length);
          for (const product of used) expect(candidates.map((each) => each.product)).toContain(product);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('with nothing on hand is empty, and says what is missing', () => {
    const [plan] = buildDay(inputFor({ thickness: 'fine', porosity: 'low' }, [], 7)).plans;
    expect(plan!.steps).toEqual([]);
    expect(plan!.missing.map(({ kind }) => kind)).toContain('cleanser');
  });

  // Common practice, each against a shelf made for it.
  const shelf = (rows: [ProductKind, string][]): Candidate[] =>
    rows.map(([kind, text], at) => ({
      product: `${kind} ${at}`,
      kind,
      use: usualUse[kind],
      reading: readLabel(text, lookup, { kind, use: usualUse[kind] }),
      owned: true,
    }));
  const sulfate = 'Aqua, Sodium Laureth Sulfate, Sodium Chloride, Parfum, Citric Acid, Sodium Benzoate';
  const mild =
    'Aqua, Decyl Glucoside, Cocamidopropyl Betaine, Glycerin, Sodium Cocoyl Glutamate, Citric Acid';
  const soft =
    'Aqua, Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Panthenol, Parfum, Citric Acid';
  const hard = 'Aqua, PVP, VP/VA Copolymer, Carbomer, Triethanolamine, Parfum, Phenoxyethanol';
  const used = (head: Partial<Head>, rows: [ProductKind, string][], washEvery: number) => {
    const [plan] = buildDay(inputFor(head, shelf(rows), washEvery)).plans;
    return { plan: plan!, products: plan!.steps.map(({ product }) => product) };
  };
  const middling: Partial<Head> = { thickness: 'medium', porosity: 'medium', damage: { kinds: [] } };
  const coarse: Partial<Head> = { thickness: 'coarse', porosity: 'medium', damage: { kinds: [] } };

  it.each([1, 3, 7])('of two shampoos that suit the milder is taken: washed every %i days', (days) => {
    const { products } = used(
      middling,
      [
        ['cleanser', sulfate],
        ['cleanser', mild],
        ['conditioner', soft],
      ],
      days,
    );
    expect(products).toContain('cleanser 1');
  });

  it('a mask that comes now and then leaves a conditioner to be wished for', () => {
    const { plan, products } = used(
      middling,
      [
        ['cleanser', mild],
        ['deep-conditioner', soft],
      ],
      3,
    );
    expect(products).toContain('deep-conditioner 1');
    expect(plan.missing.map(({ kind }) => kind)).toContain('conditioner');
  });

  it('a hard gel goes over something soft on coarse hair, or stays on the shelf', () => {
    const rows: [ProductKind, string][] = [
      ['cleanser', mild],
      ['conditioner', soft],
      ['gel', hard],
    ];
    expect(used(coarse, rows, 7).products).not.toContain('gel 2');
    expect(used(coarse, [...rows, ['leave-in', soft]], 7).products).toContain('gel 2');
  });

  it('the plans differ in the step that carries the protein', () => {
    const { plans } = buildDay(inputFor({ thickness: 'medium', porosity: 'high' }, all, 7));
    expect(plans.length).toBeGreaterThan(1);
    const told = plans.map(({ carrier, steps }) => `${carrier} ${takesTurns(steps)}`);
    expect(new Set(told).size).toBe(plans.length);
  });

  const takesTurns = (steps: readonly Step[]) => steps.some(({ cadence }) => 'from' in cadence);
  const dayBy = (input: BuildInput, steps: Step[]) =>
    plannedDays({ ...input, routine: { ...input.routine, steps }, from: today, days: 120 });
  it('protein week, moisture week: two products share a step, one at one wash, one at the next', () => {
    const rows: [ProductKind, string][] = [
      ['cleanser', mild],
      ['conditioner', soft],
      [
        'deep-conditioner',
        'Aqua, Cetearyl Alcohol, Hydrolyzed Wheat Protein, Behentrimonium Chloride, Glycerin',
      ],
      ['deep-conditioner', soft],
    ];
    const input = inputFor({ thickness: 'medium', porosity: 'high' }, shelf(rows), 7);
    const plan = buildDay(input).plans.find(({ steps }) => takesTurns(steps))!;
    expect(plan.carrier).toBe('deep-conditioner');
    expect(plan.best).toBe(false);
    const masks = plan.steps.filter(({ kind }) => kind === 'deep-conditioner');
    expect(masks.map(({ product, cadence }) => [product, cadence])).toEqual([
      ['deep-conditioner 2', { every: 'nth-wash', n: 2, from: 1 }],
      ['deep-conditioner 3', { every: 'nth-wash', n: 2, from: 2 }],
    ]);
    const ids = masks.map(({ id }) => id);
    const weeks = dayBy(input, plan.steps).map(({ steps }) => steps.filter((id) => ids.includes(id)));
    for (const [at, week] of weeks.entries()) expect(week).toEqual([ids[at % 2]]);
  });
  it('in turns keeps what was settled, on every single day', () => {
    let met = 0;
    fc.assert(
      fc.property(
        heads,
        some,
        rhythm,
        fc.integer({ min: 2, max: 6 }),
        (head, candidates, every, stepsAtMost) => {
          const input = inputFor(head, candidates, every);
          const stays = candidates.slice(0, 1).map(({ product }) => product);
          const { plans } = buildDay({ ...input, pins: { stays, stepsAtMost, without: ['cream'] } });
          for (const { steps } of plans.filter((plan) => takesTurns(plan.steps))) {
            met++;
            for (const day of dayBy(input, steps)) {
              expect(day.steps.length).toBeLessThanOrEqual(stepsAtMost);
              const kinds = day.steps.map((id) => steps.find((step) => step.id === id)!.kind);
              expect(new Set(kinds).size).toBe(kinds.length);
              expect(kinds).not.toContain('cream');
            }
            const kept = plans[0]!.steps.some(({ product }) => product === stays[0]);
            expect(steps.some(({ product }) => product === stays[0])).toBe(kept);
          }
        },
      ),
      { numRuns: 100 },
    );
    expect(met).toBeGreaterThan(0);
  });
});

describe('ways that branch', () => {
  type Way = { least: number; at: number[] };
  const costs = fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 4 }), {
    minLength: 1,
    maxLength: 5,
  });
  const on =
    (rows: number[][]) =>
    ({ least, at }: Way): Way[] =>
      (rows[at.length] ?? []).map((cost, i) => ({ least: least + cost, at: [...at, i] }));
  const root: Way = { least: 0, at: [] };

  it('are all gone through, each once, and all are behind at the end', () => {
    fc.assert(
      fc.property(costs, (rows) => {
        const seen = [...branches(root, on(rows), () => true)];
        const whole = seen.filter(({ way }) => way.at.length === rows.length);
        expect(whole).toHaveLength(rows.reduce((n, row) => n * row.length, 1));
        expect(new Set(whole.map(({ way }) => way.at.join())).size).toBe(whole.length);
        expect(seen.at(-1)!.share).toBeCloseTo(1, 9);
      }),
    );
  });

  it('lead to the least of them though most are left out', () => {
    fc.assert(
      fc.property(costs, (rows) => {
        let least = Number.POSITIVE_INFINITY;
        for (const { way } of branches(root, on(rows), (way) => way.least < least))
          if (way.at.length === rows.length) least = Math.min(least, way.least);
        expect(least).toBe(rows.reduce((sum, row) => sum + Math.min(...row), 0));
      }),
    );
  });
});

describe('a medicated shampoo', () => {
  const text = 'Aqua, Sodium Laureth Sulfate, Cocamidopropyl Betaine, Ketoconazole, Sodium Chloride';
  const medicated: Candidate = {
    product: 'scalp',
    kind: 'cleanser',
    use: 'rinse-off',
    reading: readLabel(text, lookup, { kind: 'cleanser', use: 'rinse-off' }),
    owned: true,
  };
  const head: Partial<Head> = {
    thickness: 'fine',
    porosity: 'low',
    scalpKind: 'flaky',
    damage: { kinds: [] },
  };
  const input = inputFor(head, [medicated, ...all.filter(({ kind }) => kind !== 'cleanser')], 7);
  const uses = (built: ReturnType<typeof buildDay>) =>
    built.plans.some(({ steps }) => steps.some(({ product }) => product === 'scalp'));
  it('is proposed for no step, and told to stay on the shelf', () => {
    const built = buildDay(input);
    expect(built.plans.length).toBeGreaterThan(0);
    expect(uses(built)).toBe(false);
    for (const { leftOut } of built.plans) expect(leftOut.map(({ product }) => product)).toContain('scalp');
  });
  it('stays where the person put it', () => {
    const built = buildDay({ ...input, pins: { stays: ['scalp'] } });
    expect(uses(built)).toBe(true);
  });
  it('is never what was looked for', () => {
    for (const protein of ['free', 'some'] as const)
      expect(
        fulfils(
          medicated.reading,
          'cleanser',
          { kind: 'cleanser', protein, moisture: false, lifts: true },
          practice,
        ),
      ).toBe('no');
  });
});
