// What the strip says a product brings, and the sentence behind a likely share. Dictionary and catalogue are the real ones.
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { bringsFor } from '../../src/core/amounts/brings.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { type ProductKind, usualUse } from '../../src/core/product/product.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { bringsWords } from '../../src/ui/describe/brings.ts';
import { amountWords, shareWords } from '../../src/ui/describe/share.ts';
import { translator } from '../../src/ui/words/index.ts';

const t = translator('en');
const lookup = createLookup(entries, patterns, limits);
const read = (text: string, kind: ProductKind) => readLabel(text, lookup, { kind, use: usualUse[kind] });

describe('one line says what a product brings', () => {
  it.each<[ProductKind, string, string]>([
    [
      'conditioner',
      'Aqua, Cetearyl Alcohol, Behentrimonium Chloride, Glycerin, Cetyl Esters, Panthenol, Hydrolyzed Silk, Parfum',
      'a little protein (small), some moisture (softens, draws water)',
    ],
    [
      'cleanser',
      'Aqua, Sodium Laureth Sulfate, Cocamidopropyl Betaine, Sodium Chloride, Glycol Distearate, Parfum',
      'washes strongly, no protein to speak of, no moisture to speak of',
    ],
    [
      'oil',
      'Simmondsia Chinensis Seed Oil, Argania Spinosa Kernel Oil, Tocopherol',
      'no protein to speak of, some moisture (softens, seals)',
    ],
    [
      'protein-treatment',
      'Aqua, Hydrolyzed Keratin, Cetyl Alcohol, Hydrolyzed Wheat Protein, Cetrimonium Chloride, Parfum',
      'a lot of protein (small, large), a little moisture (softens)',
    ],
  ])('%s: %s', (kind, text, words) => {
    expect(bringsWords(bringsFor(read(text, kind), { kind }, practice.washDay)!, t)).toBe(words);
  });
  it('says nothing where the kind is not known or no label was read', () => {
    expect(bringsFor(read('Aqua, Glycerin', 'gel'), {}, practice.washDay)).toBeUndefined();
    expect(bringsFor(undefined, { kind: 'gel' }, practice.washDay)).toBeUndefined();
  });
});

describe('the sentence behind a likely share', () => {
  const text = 'Aqua, Glycerin, Hydrolyzed Keratin, Cetearyl Alcohol, Panthenol, Parfum, Hydrolyzed Silk';
  const reading = read(text, 'leave-in');
  it.each([
    [
      2,
      /^Likely up to 4\.55\s% \(95 of 100 .* leave-on hair products, NIFDC list\); the label alone would allow 33\.3\s%\./,
    ],
    [3, /\(Hydrolyzed Keratin stands before it\)/],
    [5, /\(a usual sign of the one-percent line\)/],
    [6, /^Likely up to 0\.25\s% \(common practice\)/],
  ])('name %i: %s', (index, words) => {
    expect(shareWords(index, reading, t)).toMatch(words);
  });
  it('words first', () => {
    expect(amountWords(reading.mentions[2]!, t)).toBe('some, likely up to 4.55\u00a0%');
    expect(amountWords(reading.mentions[0]!, t)).toMatch(/^14\.3 to 100/);
    expect(amountWords(read('Aqua, Glycerin 3%, Parfum', 'gel').mentions[1]!, t)).toBe('3\u00a0%');
  });
});
