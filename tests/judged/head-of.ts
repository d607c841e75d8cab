import type { Avoid, DamageKind, Head, Scalp, StretchTest } from '../../src/core/hair/head.ts';
import { allergens } from '../../src/core/names/entry.ts';
import type { Row } from './rows.ts';

/** The day on which rows are judged; stretch tests told in the notes were made then. */
export const today = '2026-03-02';

/** A head as a row describes it: what is not told stays open. */
export function headOf(row: Row): Head {
  const said = <T extends string>(cell: string | undefined) => (cell ? { value: cell as T } : undefined);
  const damage = damageOf(row.damage);
  const thickness = said<NonNullable<Head['thickness']>>(row.thickness);
  const porosity = said<NonNullable<Head['porosity']>>(row.porosity);
  const density = said<NonNullable<Head['density']>>(row.density);
  const shape = said<NonNullable<Head['shape']>>(row.shape);
  const scalp = said<Scalp>(row.scalp);
  return {
    id: row.id ?? 'head',
    name: row.id ?? 'head',
    ...(thickness && { thickness: thickness.value }),
    ...(porosity && { porosity: porosity.value }),
    ...(damage && { damage }),
    ...(density && { density: density.value }),
    ...(shape && { shape: shape.value }),
    ...(scalp && { scalpKind: scalp.value }),
    avoid: avoidOf(row.notes ?? ''),
    stretch: stretchOf(row.notes ?? ''),
    setAside: [],
    added: today,
  };
}

/** `bleach+heat:most:months`, `none`, or nothing told. */
function damageOf(cell: string | undefined): Head['damage'] | undefined {
  if (!cell) return undefined;
  if (cell === 'none') return { kinds: [] };
  const [kinds = '', length, recent] = cell.split(':');
  return {
    kinds: kinds.split('+') as DamageKind[],
    ...(length && { length: length as 'ends' }),
    ...(recent && { recent: recent as 'weeks' }),
  };
}

/** Families to avoid, and names that are no family of ours. */
function avoidOf(notes: string): Avoid[] {
  const reacted = /react|allerg/i.test(notes);
  return notes
    .split(';')
    .filter((note) => /avoid|allerg|react/i.test(note))
    .flatMap((note) => {
      const families = allergens.filter((family) => familyWords(family).test(note));
      return families.map((family) => ({ id: family, family, reacted }));
    });
}

const familyWords = (family: string) =>
  new RegExp(
    {
      sensitizer: '\\bsensitizers?\\b',
      fragrance: '\\b(?:fragrance|perfume|scent)s?\\b',
      nut: '(?<!pea)\\b(?:tree )?nuts?\\b',
    }[family] ?? `\\b${family.replaceAll('-', '[ -]')}s?\\b`,
    'i',
  );

/** "wet strands stretch far and stay stretched" is a stretch test told in words. */
function stretchOf(notes: string): StretchTest[] {
  if (!/stretch\w* far|over-?stretch|gummy|stay\w* stretched/i.test(notes)) return [];
  return [{ id: 'told', date: today, rest: 100, stretched: 170, after: 140, broke: false }];
}

const numberWords: Record<string, number> = {
  once: 1,
  twice: 2,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  ten: 10,
};
const numeral = `(\\d+|${Object.keys(numberWords).join('|')})`;
const numberOf = (word: string) => numberWords[word] ?? Number(word);

/** Days between washes, as the notes tell them; undefined where they do not. */
export function washEveryOf(notes: string): number | undefined {
  const text = notes.toLowerCase();
  const found = (source: string) => new RegExp(source).exec(text);
  if (found('every (?:other|second) day')) return 2;
  if (found('every (?:single )?day|\\bdaily\\b')) return 1;
  const days = found(`every ${numeral} days`);
  if (days) return numberOf(days[1]!);
  const weeks = found(`every ${numeral} weeks`);
  if (weeks) return 7 * numberOf(weeks[1]!);
  if (found('fortnight|every (?:other|second) week')) return 14;
  const times = found(`${numeral}(?: times)? (?:a|per|each) week`);
  if (times) return 7 / numberOf(times[1]!);
  if (found('every week|\\bweekly\\b')) return 7;
  if (found('(?:once )?a month|monthly')) return 30;
  return undefined;
}
