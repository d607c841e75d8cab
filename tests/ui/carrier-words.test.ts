import fc from 'fast-check';
import { expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { allowanceOf } from '../../src/core/hair/tolerance.ts';
import { buildDay } from '../../src/core/plan/build/build.ts';
import type { ProductKind } from '../../src/core/product/product.ts';
import { carrierWords } from '../../src/ui/routine/plan/carrier-words.ts';
import { translator } from '../../src/ui/words/index.ts';
import { madeCandidates } from '../core/plan/made-candidates.ts';
import { madeHead } from '../keeping/made.ts';
import { lookup } from '../use/knowing.ts';

// Invented labels, with protein and without.
const labels: [ProductKind, string][] = [
  ['cleanser', 'Aqua, Decyl Glucoside, Coco-Betaine, Glycerin, Panthenol, Citric Acid'],
  ['conditioner', 'Aqua, Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Parfum'],
  ['conditioner', 'Aqua, Cetyl Alcohol, Cetrimonium Chloride, Hydrolyzed Keratin, Panthenol'],
  ['deep-conditioner', 'Aqua, Cetearyl Alcohol, Butyrospermum Parkii Butter, Glycerin'],
  ['deep-conditioner', 'Aqua, Cetearyl Alcohol, Hydrolyzed Wheat Protein, Behentrimonium Chloride'],
  ['protein-treatment', 'Aqua, Hydrolyzed Collagen, Hydrolyzed Keratin, Magnesium Sulfate'],
  ['leave-in', 'Aqua, Glycerin, Hydrolyzed Silk, Cetrimonium Chloride, Panthenol'],
  ['leave-in', 'Aqua, Glycerin, Behentrimonium Chloride, Aloe Barbadensis Leaf Juice, Panthenol'],
];
const candidates = madeCandidates(labels, lookup);
const today = '2026-01-01';
const heads = fc.record({
  thickness: fc.constantFrom('fine' as const, 'medium' as const, 'coarse' as const),
  porosity: fc.constantFrom('low' as const, 'medium' as const, 'high' as const),
});

it('plans that are offered beside each other are told by different words, those in turns too', () => {
  let inTurnsElsewhere = 0;
  const t = translator('en');
  fc.assert(
    fc.property(
      heads,
      fc.subarray(candidates, { minLength: 4 }),
      fc.constantFrom(3, 7),
      (hair, some, washEvery) => {
        const head = madeHead({ ...hair, damage: { kinds: [] }, stretch: [], avoid: [], uses: {} });
        const { plans } = buildDay({
          head,
          allowance: allowanceOf(head, practice.allowance, { today, log: [] }),
          practice,
          log: [],
          today,
          routine: { id: 'r', head: head.id, name: 'day', steps: [], added: today, washEvery },
          candidates: some,
        });
        const told = plans.map((plan) => carrierWords(t, plan));
        expect(new Set(told).size, told.join(' | ')).toBe(plans.length);
        inTurnsElsewhere += told.filter((words) => words.includes('in turns:')).length;
      },
    ),
    { numRuns: 60 },
  );
  expect(inTurnsElsewhere).toBeGreaterThan(0);
});
