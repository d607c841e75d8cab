import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limits } from '../../dictionary/index.ts';
import { createRemarks } from '../../src/core/label/no-names/remarks.ts';
import { splitLabel } from '../../src/core/label/split-label.ts';
import { spent } from '../spent.ts';
import { labelLines } from './label-lines.ts';

const remarks = createRemarks(limits.labelWords);
const mentionsOf = (label: string) =>
  splitLabel(label, remarks)
    .parts.map(({ raw, percent, tail, list, within }) =>
      [
        raw,
        percent === undefined ? '' : `=${percent}`,
        tail ? '~' : '',
        within === undefined ? '' : '^',
        list > 0 ? `@${list}` : '',
      ].join(''),
    )
    .join(' | ');

for (const [name, lines] of Object.entries(labelLines))
  describe(name, () => {
    it.each(lines)('%j', (label, mentions) => {
      expect(mentionsOf(label)).toBe(mentions);
    });
  });

it('at least 150 lines', () => {
  expect(Object.values(labelLines).flat().length).toBeGreaterThanOrEqual(150);
});

it('active and inactive headings are told', () => {
  expect(splitLabel('Active: Salicylic Acid 2%. Inactive: Water, Glycerin', remarks).drugStyle).toBe(true);
  expect(splitLabel('Ingredients: Water, Glycerin', remarks).drugStyle).toBe(false);
});

it('offsets give back the letters, whatever the text', () => {
  const bits = fc.constantFrom(
    ...'Aqua|Glycerin|1,2-Hexanediol|, |. |; |\n|\n\n|(|)|[|]|*|:|%|5|&amp;|&eacute;|<br>|\u200b|é|Ingredients|May contain|free from|and|/|-|•|®'.split(
      '|',
    ),
  );
  fc.assert(
    fc.property(
      fc.array(fc.oneof(bits, fc.string({ unit: 'grapheme', maxLength: 3 })), { maxLength: 40 }),
      (some) => {
        const text = some.join('');
        const { parts } = splitLabel(text, remarks);
        for (const { raw, from, to, names } of parts) {
          expect(text.slice(from, to)).toBe(raw);
          expect(names.length).toBeLessThan(40);
        }
        for (const part of parts.filter(({ within }) => within === undefined))
          expect(
            parts.filter(
              (other) =>
                other !== part && other.within === undefined && other.from < part.to && part.from < other.to,
            ),
          ).toEqual([]);
      },
    ),
    { numRuns: 500 },
  );
});

it.each([
  ['commas', ','.repeat(5_000)],
  ['names', 'Aqua, '.repeat(6_000)],
  ['open brackets', '('.repeat(40_000)],
  ['nested brackets', `${'(a'.repeat(10_000)}${')'.repeat(10_000)}`],
  ['line breaks', 'a\n'.repeat(20_000)],
  ['invisible letters', '\u200b'.repeat(40_000)],
  ['digits', '1,2,'.repeat(10_000)],
  ['colons', 'a: '.repeat(13_000)],
  ['stars', '*'.repeat(40_000)],
  ['2 MB of words', 'lorem ipsum dolor '.repeat(120_000)],
])('%s end in bounded time', (_, text) => {
  const took = spent(() => splitLabel(text, remarks));
  // Far above what it takes (tens of milliseconds): only runaway growth fails here.
  expect(took).toBeLessThan(15_000);
});
