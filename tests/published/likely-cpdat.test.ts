import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import type { Figure } from '../../src/core/amounts/use-levels.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

// US EPA, CPDat v3: quantiles of the upper ends of data-sheet brackets per chemical and hair product kind, laid
// beside the project. Chemical names to label names by hand, from memory of the substances.
const file = join(import.meta.dirname, '../../../shared/data/use-levels/cpdat-hair-quantiles.tsv');
const labelNames: Record<string, string> = {
  '1,2-Propylene glycol': 'Propylene Glycol',
  '1,3-Butanediol': 'Butylene Glycol',
  Glycerol: 'Glycerin',
  Panthenol: 'Panthenol',
  '1-Hexadecanol': 'Cetyl Alcohol',
  '1-Octadecanol': 'Stearyl Alcohol',
  'Behentrimonium methosulfate': 'Behentrimonium Methosulfate',
  'Docosyltrimethylammonium chloride': 'Behentrimonium Chloride',
  'Hexadecyl trimethyl ammonium chloride': 'Cetrimonium Chloride',
  'N,N-Dimethyl-N-benzyl-N-octadecylammonium chloride': 'Stearalkonium Chloride',
  Dihexadecyldimethylammonium: 'Dicetyldimonium Chloride',
  'N-[3-(Dimethylamino)propyl]octadecanamide': 'Stearamidopropyl Dimethylamine',
  Decamethylcyclopentasiloxane: 'Cyclopentasiloxane',
  'Isopropyl tetradecanoate': 'Isopropyl Myristate',
  '2-Hydroxyethyl octadecanoate': 'Glycol Stearate',
  'Octadecanoic acid, 1,2-ethanediyl ester': 'Glycol Distearate',
  'Ammonium dodecyl sulfate': 'Ammonium Lauryl Sulfate',
  'Sodium dodecyl sulfate': 'Sodium Lauryl Sulfate',
  'Diethylene glycol monolauryl ether sulfate sodium salt': 'Sodium Laureth Sulfate',
  'Sodium lauryltrioxyethylene sulfate': 'Sodium Laureth Sulfate',
  'Glycine, N-methyl-N-(1-oxododecyl)-, sodium salt': 'Sodium Lauroyl Sarcosinate',
  'Decyl D-glucopyranoside': 'Decyl Glucoside',
  Ethanol: 'Alcohol Denat.',
  Isopropanol: 'Isopropyl Alcohol',
  Isobutane: 'Isobutane',
  Propane: 'Propane',
  Butane: 'Butane',
};
const rinseOff = ['conditioner', 'shampoo', 'shampoo (baby)', 'shampoo (dandruff)', 'mask/treatment'];
const leaveOn = ['leave-in', 'styling (any)', 'hairspray'];

/** Classes of which less than nine tenths lie within, and why. */
const below: Record<string, string> = {
  'rinse-off polyol': 'a twentieth of conditioners above 18; between the quantiles a straight line is drawn',
  'leave-on polyol': 'curl gels and pomades up to 60; between the quantiles a straight line is drawn',
  'rinse-off small-quat': 'brackets of 5 to 10; our bound is the frame’s 5, and 5 is its median',
  'leave-on small-quat': 'brackets of 1 to 5; our bound is the Chinese list’s 2.5',
  'rinse-off amidoamine': 'brackets of 5 to 10; our bound is the frame’s 5',
  'rinse-off panthenol': 'brackets of 1 to 10 for what is used below 2',
  'rinse-off pearliser': 'brackets of 1 to 10: their end is the bracket’s, not the product’s',
  'rinse-off volatile-silicone': 'neat serums stand under conditioner, and brackets end at 100',
  'leave-on volatile-silicone': 'neat serums stand under styling, and brackets end at 100',
  'leave-on alcohol': 'hairsprays and dry lotions: their frames allow 80 to 95',
  'rinse-off ester': 'six values, one of them a neat oil',
  'leave-on ester': 'six values, hair oils and shine sprays among them',
};

const lookup = createLookup(entries, patterns, limits);
type Row = { kind: string; n: number; quantiles: [share: number, percent: number][] };

/** Share of a row's values at or below a bound: linear between its quantiles. */
function shareBelow({ quantiles }: Row, bound: number): number {
  if (bound >= quantiles.at(-1)![1]) return 1;
  const above = quantiles.findIndex(([, percent]) => percent > bound);
  if (above <= 0) return 0;
  const [[p, x], [q, y]] = [quantiles[above - 1]!, quantiles[above]!];
  return p + ((q - p) * (bound - x)) / (y - x);
}

it.skipIf(!existsSync(file))(
  'nine tenths of the values of CPDat lie within, class by class, or it is said why not',
  () => {
    const lines = readFileSync(file, 'utf8').trim().split('\n').slice(1);
    const within = new Map<string, { n: number; inside: number }>();
    for (const line of lines) {
      const [chemical, , kind, n, min, p25, median, p75, p95, max] = line.split('\t');
      const printed = labelNames[chemical!];
      const use = rinseOff.includes(kind!) ? 0 : leaveOn.includes(kind!) ? 1 : undefined;
      if (!printed || use === undefined) continue;
      const { of } = lookup.useOf(lookup.find(printed));
      const front: Figure | undefined = of?.front;
      const bound = front?.[use] ?? 100;
      const row: Row = {
        kind: kind!,
        n: Number(n),
        quantiles: [
          [0, Number(min)],
          [0.25, Number(p25)],
          [0.5, Number(median)],
          [0.75, Number(p75)],
          [0.95, Number(p95)],
          [1, Number(max)],
        ],
      };
      const key = `${use ? 'leave-on' : 'rinse-off'} ${of!.id}`;
      const sum = within.get(key) ?? { n: 0, inside: 0 };
      within.set(key, { n: sum.n + row.n, inside: sum.inside + row.n * shareBelow(row, bound) });
    }
    const shares = [...within].map(([key, { n, inside }]) => ({ key, n, share: inside / n }));
    console.info(
      shares.map(({ key, n, share }) => `${key}: ${(share * 100).toFixed(0)} % of ${n}`).join('\n'),
    );
    const outside = shares.filter(({ share }) => share < 0.9).map(({ key }) => key);
    expect(outside.filter((key) => !below[key])).toEqual([]);
    // A reason that is needed no more is taken out.
    expect(Object.keys(below).filter((key) => !outside.includes(key))).toEqual([]);
    expect(shares.length).toBeGreaterThan(12);
  },
);
