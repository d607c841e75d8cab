import { expect, it } from 'vitest';
import { runWords } from '../../src/ui/routine/days/run-card.tsx';
import { translator } from '../../src/ui/words/index.ts';

const t = translator('en');
const run = { days: [], answer: 'suits' as const, dosesAMonth: 0 };

it('a run is said in whole sentences', () => {
  expect(runWords({ t }, run)).toEqual(['No product with protein in thirty days.']);
  expect(runWords({ t }, { ...run, between: { least: 28, most: 28 }, wanted: 14, dosesAMonth: 5 })).toEqual([
    'A treatment comes every 28 days.',
    'This hair does best with 14 days or more between them.',
    'About 5 uses of products with protein in thirty days.',
  ]);
  expect(runWords({ t }, { ...run, between: { least: 21, most: 28 } })[0]).toBe(
    '21 to 28 days lie between treatments.',
  );
});
