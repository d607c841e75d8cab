import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { productKinds, usualUse } from '../../src/core/product/product.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const read = (text: string, kind: (typeof productKinds)[number] = 'conditioner') =>
  readLabel(text, lookup, { kind, use: usualUse[kind] });
const named = (text: string, name: string, kind?: (typeof productKinds)[number]) =>
  read(text, kind).mentions.find(({ raw }) => raw.startsWith(name))!;

describe('the likely share of a name', () => {
  it('a protein in front keeps to the highest registered of its class', () => {
    const keratin = named('Aqua, Hydrolyzed Keratin, Cetyl Alcohol, Glycerin', 'Hydrolyzed Keratin');
    expect(keratin.share.max).toBe(50);
    expect(keratin.likely).toEqual({ min: 0, max: 5 });
    expect(keratin.likelyWhy).toMatchObject({ basis: 'class-p95', source: 'nifdc-2024' });
  });
  it('an earlier name holds every later one until the one-percent line', () => {
    const { mentions } = read(
      'Aqua, Cetearyl Alcohol, Hydrolyzed Silk, Glycerin, Cetyl Alcohol, Parfum, Cetyl Esters',
    );
    expect(mentions[3]!.likely!.max).toBe(mentions[2]!.likely!.max);
    expect(mentions[3]!.likelyWhy).toMatchObject({ basis: 'order', after: 2 });
    expect(mentions[6]!.likely!.max).toBeLessThanOrEqual(1);
  });
  it('fats of a conditioner share one sum', () => {
    const oil = named('Aqua, Cetearyl Alcohol, Cocos Nucifera Oil, Glycerin, Parfum', 'Cocos');
    expect(oil.likely!.max).toBe(10);
    expect(oil.likelyWhy!.basis).toBe('frame');
  });
  it.each([
    ['a plant water', 'Rosa Damascena Flower Water, Aqua, Glycerin, Parfum', 'Rosa', 'refresh-spray'],
    ['a neat oil', 'Cocos Nucifera Oil, Simmondsia Chinensis Seed Oil, Tocopherol', 'Cocos', 'oil'],
    ['a neat silicone', 'Cyclopentasiloxane, Dimethiconol, Parfum', 'Cyclo', 'oil'],
  ] as const)('%s has none', (_, text, name, kind) => {
    expect(named(text, name, kind).likely).toBeUndefined();
  });
  it('a spray of two phases keeps to their frame, one that is held together to a lotion’s', () => {
    const two = named('Aqua, Cyclopentasiloxane, Dimethicone, Sodium Chloride, Parfum', 'Cyclo', 'leave-in');
    expect(two.likely!.max).toBe(50);
    expect(two.likelyWhy).toMatchObject({ basis: 'frame', source: 'frames-2013' });
    const one = named('Aqua, Cyclopentasiloxane, Carbomer, Dimethicone, Parfum', 'Cyclo', 'leave-in');
    expect(one.likely!.max).toBe(5);
  });
  it('a cationic conditioner in front of a solid bar is part of its body, further back it is not', () => {
    const bar = 'Cetearyl Alcohol, Behentrimonium Methosulfate, Theobroma Cacao Seed Butter, Parfum';
    expect(named(bar, 'Behen').likely).toBeUndefined();
    expect(named(bar.replace('Cetearyl Alcohol,', 'Aqua, Cetearyl Alcohol,'), 'Behen').likely!.max).toBe(5);
    const late = `Sodium Cocoyl Isethionate, Stearic Acid, Cetyl Alcohol, Cetearyl Alcohol, Kaolin, Illite, ${bar}`;
    expect(named(late, 'Behen', 'cleanser').likely!.max).toBeLessThan(5);
  });
  it('a law that allows a trace does not hold a name in front, nor those after it', () => {
    const text =
      'Aqua, Stearyl Alcohol, Cyclopentasiloxane, Cetyl Alcohol, Stearamidopropyl Dimethylamine, Parfum';
    expect(named(text, 'Cyclo').likely!.max).toBeGreaterThan(1);
    expect(named(text, 'Stearamido').likely!.max).toBeGreaterThan(1);
    const lawful = readLabel(text, lookup, { kind: 'conditioner', use: 'rinse-off', market: 'eu' });
    expect(lawful.mentions[2]!.likely!.max).toBeLessThanOrEqual(0.1);
  });
  it('where the order says nothing, the place says nothing either', () => {
    const text = 'Aqua, Cetyl Alcohol, Glycerin, Hydrolyzed Wheat Protein, Milk Extract, Panthenol';
    expect(read(text).order).toBe('uninformative');
    expect(named(text, 'Hydrolyzed').likely!.max).toBe(5);
    expect(named(text, 'Panthenol').likely!.max).toBe(5);
  });
  it('a printed share above usual practice drops the band and says so', () => {
    const glycerin = named('Aqua, Glycerin 40%, Cetyl Alcohol, Parfum', 'Glycerin');
    expect(glycerin.likely).toBeUndefined();
    expect(glycerin.likelyWhy!.basis).toBe('unusual');
  });
  it('EU ceilings narrow what the label allows only in that market, likely shares everywhere', () => {
    const text = 'Aqua, Cetyl Alcohol, Glycerin, Phenoxyethanol';
    const top = (market?: 'eu' | 'other') => {
      const { share, likely } = readLabel(text, lookup, { ...(market && { market }) }).mentions[3]!;
      return [Math.round(share.max), likely!.max];
    };
    expect([top('eu'), top('other'), top()]).toEqual([
      [1, 1],
      [25, 1],
      [25, 1],
    ]);
  });
});

const names = entries.map(({ name }) => name).filter((name) => !/,/.test(name));

it('lies within what the label allows, for any list of known names', () => {
  const list = fc.array(
    fc.constantFrom(...names, 'Aqua', 'Glycerin 3%', 'Hydrolyzed Wheat Protein', 'Zzyx'),
    {
      minLength: 1,
      maxLength: 30,
    },
  );
  fc.assert(
    fc.property(
      list,
      fc.constantFrom(...productKinds),
      fc.constantFrom('eu', 'other', undefined),
      (all, kind, market) => {
        const reading = readLabel(all.join(', '), lookup, {
          kind,
          use: usualUse[kind],
          ...(market && { market }),
        });
        for (const { share, likely, usual } of reading.mentions) {
          if (!likely) continue;
          expect(likely.min).toBeGreaterThanOrEqual(share.min);
          expect(likely.max).toBeLessThanOrEqual(share.max);
          expect(likely.min).toBeLessThanOrEqual(likely.max);
          expect(usual).toBeGreaterThanOrEqual(likely.min);
          expect(usual).toBeLessThanOrEqual(likely.max);
        }
      },
    ),
    { numRuns: 400, seed: 20261126 },
  );
});
