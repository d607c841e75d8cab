import { expect, it } from 'vitest';
import { judgeKept } from '../../../src/use/judge/judge-met.ts';
import { washDayInput } from '../../../src/use/judge/wash-day-input.ts';
import { madeHead, madeProduct, madeRoutine } from '../../keeping/made.ts';
import { knowing } from '../knowing.ts';

const products = Array.from({ length: 40 }, (_, n) =>
  madeProduct({
    id: `p${n}`,
    labels: [{ text: `Aqua, Glycerin, ${'Panthenol, '.repeat(n % 3)}Parfum`, seen: '' }],
  }),
);
const [step] = madeRoutine().steps;
const steps = [0, 1, 2].map((n) => ({ ...step!, id: `s${n}`, product: `p${n}` }));
const routine = madeRoutine({ steps });
const whole = () => knowing({ heads: [madeHead()], products, routines: [routine] });

it('the wash day is put together once for all products that are judged', () => {
  let read = 0;
  const world = whole();
  const counted = {
    ...world,
    reading: (...of: Parameters<typeof world.reading>) => {
      read++;
      return world.reading(...of);
    },
  };
  for (const product of products) expect(judgeKept(counted, product)?.checks).toHaveLength(2);
  expect(read).toBe(products.length + steps.length);
});

it('while a label of the routine is still being read, it is asked for each time', () => {
  const world = whole();
  let there = false;
  const late = {
    ...world,
    reading: (...of: Parameters<typeof world.reading>) => (there ? world.reading(...of) : undefined),
  };
  expect([...washDayInput(late, routine).readings.values()]).toEqual([undefined, undefined, undefined]);
  there = true;
  expect(washDayInput(late, routine).readings.get('s0')?.mentions).toHaveLength(3);
  const later = { ...late, today: '2026-04-01' };
  expect(washDayInput(later, routine).today).toBe('2026-04-01');
});
