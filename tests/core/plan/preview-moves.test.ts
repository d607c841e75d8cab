import { describe, expect, it } from 'vitest';
import { speaksAgainst } from '../../../src/core/judge/finding.ts';
import { previewMoves } from '../../../src/core/plan/preview-moves.ts';
import { suggest } from '../../../src/core/plan/suggest.ts';
import { washDay } from '../../../src/core/wash-day/add-up.ts';
import { randomDay } from '../random-day.ts';

// Random days that no rule was tuned on; the search and the preview must agree on what a change does.
const seeds = Array.from({ length: 60 }, (_, at) => at + 500);

describe('changes looked at before they are made', () => {
  it('all lines of a suggestion together leave nothing that speaks against the day', () => {
    let found = 0;
    for (const seed of seeds) {
      const input = randomDay(seed, 3 + (seed % 2), 20);
      const answer = suggest(input);
      if (answer.answer !== 'found') continue;
      for (const { moves } of answer.suggestions) {
        found++;
        let nth = 0;
        const { comes, goes, routine, touched } = previewMoves(
          input,
          moves,
          input.candidates,
          () => `added-${++nth}`,
        );
        expect(comes.filter(speaksAgainst)).toEqual([]);
        // What spoke against the day is settled, or can be told no more.
        const told = new Set([...goes, ...comes].map(({ rule }) => rule));
        for (const { rule } of washDay(input).findings.filter(speaksAgainst)) expect(told).toContain(rule);
        const changed = moves.filter((move) => move.do !== 'omit');
        expect(touched).toHaveLength(changed.length);
        for (const id of touched) expect(routine.steps.map((step) => step.id)).toContain(id);
      }
    }
    expect(found).toBeGreaterThan(30);
  });
  it('one line alone never claims more than the day after it says', () => {
    for (const seed of seeds.slice(0, 30)) {
      const input = randomDay(seed, 3 + (seed % 2), 20);
      const answer = suggest(input);
      if (answer.answer !== 'found') continue;
      for (const move of answer.suggestions[0]!.moves) {
        const { routine, comes } = previewMoves(input, [move], input.candidates, () => 'added');
        const read = new Map(input.candidates.map(({ product, reading }) => [product, reading]));
        const before = new Map(input.routine.steps.map(({ id, product }) => [id, product]));
        const readings = new Map(
          routine.steps.map(({ id, product }) => [
            id,
            before.get(id) === product ? input.readings.get(id) : read.get(product!),
          ]),
        );
        const after = washDay({ ...input, routine, readings }).findings;
        for (const finding of comes) expect(after).toContainEqual(finding);
      }
    }
  });
});
