// A name is put to the expressions of those families only that it may be of. Phrases and texts are drawn at random.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createCandidates } from '../../src/core/names/candidates.ts';
import { phraseFinder, stretchOf } from '../../src/core/names/phrases.ts';

const word = fc.string({ unit: fc.constantFrom('e', 'i', 'o', '卵'), minLength: 1, maxLength: 4 });
const starred = fc
  .tuple(fc.constantFrom('', '*'), word, fc.constantFrom('', '*'))
  .map((part) => part.join(''));
const phrase = fc
  .tuple(
    fc.constantFrom('', '^ '),
    fc.array(starred, { minLength: 1, maxLength: 2 }),
    fc.constantFrom(' ', ' … '),
    fc.constantFrom('', ' $'),
  )
  .map(([start, words, between, end]) => `${start}${words.join(between)}${end}`);
const text = fc.array(word, { minLength: 1, maxLength: 5 }).map((words) => ` ${words.join(' ')} `);
const fold = (piece: string) => ` ${piece} `;

test('no phrase that stands in a text is left out by the letters it needs', () => {
  let [found, spared] = [0, 0];
  fc.assert(
    fc.property(fc.array(phrase, { minLength: 1, maxLength: 6 }), text, (phrases, within) => {
      const mayBe = createCandidates(phrases.map((each) => ({ needs: [stretchOf(each, fold)] })))(within);
      for (const [at, each] of phrases.entries()) {
        const stands = phraseFinder([each], fold).test(within);
        if (stands) {
          found++;
          expect(mayBe).toContain(at);
        } else if (!mayBe.includes(at)) spared++;
      }
    }),
    { numRuns: 2000 },
  );
  expect(Math.min(found, spared)).toBeGreaterThan(100);
});
