// The chart's mark of what the hair takes and the rule on the dose of a day go by one figure (common practice).
import { expect, it } from 'vitest';
import { steps } from '../../src/core/amounts/brings.ts';
import type { Head } from '../../src/core/hair/head.ts';
import { allowances } from '../../src/core/hair/tolerance.ts';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import { takesOf } from '../../src/ui/routine/plan/takes.ts';
import { day, hand, head, water, wheat } from '../core/hand-read.ts';
import { fakeWorld, nothing } from './fake-world.ts';

const described = (level: (typeof allowances)[number]): Head =>
  head({ id: 'a', thickness: 'medium', porosity: 'medium', damage: { kinds: [] }, allowanceByHand: level });
const takes = (of: Head) =>
  takesOf(fakeWorld({ remembered: { ...nothing, heads: [of] } }).world, { head: of.id, washEvery: 4 });

it('rises with tolerance, and is not told where nothing is known of the hair', () => {
  expect(allowances.map((level) => takes(described(level)))).toEqual([
    'a-little',
    'a-little',
    'some',
    'some',
    'a-lot',
  ]);
  expect(takes(head({ id: 'a' }))).toBeUndefined();
});

it.each(allowances)('a day beyond the mark is never said to be within: %s', (level) => {
  const of = described(level);
  const mark = steps.indexOf(takes(of)!);
  let beyond = 0;
  for (const kind of ['cream', 'leave-in', 'gel'] as const)
    for (const percent of [0.02, 0.1, 0.3, 0.6, 1, 2, 4, 8, 15]) {
      const reading = hand([water, { ...wheat, share: { min: percent, max: percent } }]);
      const all = washDay(day([{ kind, of: reading }], of));
      if (steps.indexOf(all.stays.day.protein.step) <= mark) continue;
      beyond++;
      const rule = all.findings.find((each) => each.rule === 'too-much-protein');
      expect(rule?.answer, `${kind} ${percent}`).not.toBe('suits');
      expect(rule).toBeDefined();
    }
  if (mark < steps.length - 1) expect(beyond).toBeGreaterThan(0);
});
