import type { Avoid, AvoidableRole, DamageKind, Head, Scalp, StretchTest } from '../../src/core/hair/head.ts';
import { allergens } from '../../src/core/names/entry.ts';
import type { LogEntry } from '../../src/core/wash-day/routine.ts';
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

/** Families and kinds of matter to avoid. */
function avoidOf(notes: string): Avoid[] {
  return notes
    .split(';')
    .filter((note) => /avoid|allerg|react|intoleran/i.test(note))
    .flatMap((note): Avoid[] => {
      const reacted = /react|allerg/i.test(note);
      const families = allergens.filter((family) => familyWords(family).test(note));
      const kinds = roleWords.filter(([words]) => words.test(note));
      return [
        ...families.map((family) => ({ id: family, family, reacted })),
        ...kinds.map(([, role]) => ({ id: role, role, reacted })),
      ];
    });
}

const spoken: Record<string, string> = {
  fragrance: 'fragrances?|perfumes?|scents?|parfum',
  nut: '(?:tree )?nuts?|almonds?|hazelnuts?|walnuts?',
  milk: 'milk|dairy|casein|lactose',
  egg: 'eggs?',
  soy: 'soya?',
  oat: 'oats?',
  'gluten-cereal': 'gluten|barley|rye',
  'bee-products': 'bee products?|honey|propolis|beeswax',
  sulphite: 'sul(?:ph|f)ites?',
  shellfish: 'shellfish|crustaceans?|molluscs?',
};
const familyWords = (family: string) =>
  new RegExp(`\\b(?:${spoken[family] ?? `${family.replaceAll('-', '[ -]')}s?`})\\b`, 'i');

const roleWords: [RegExp, AvoidableRole][] = [
  [/sul(?:ph|f)ates?/i, 'cleansing-strong'],
  [/silicones?/i, 'film-former'],
  [/(?:drying )?alcohols?/i, 'drying-alcohol'],
];

/** "wet strands stretch far and stay stretched" is a stretch test told in words. */
function stretchOf(notes: string): StretchTest[] {
  if (!/stretch\w* far|over-?stretch|gummy|stay\w* stretched/i.test(notes)) return [];
  return [{ id: 'told', date: today, rest: 100, stretched: 170, after: 140, broke: false }];
}

/** "went stiff after protein": wash days of the log, told in words. */
export function logOf(row: Row): LogEntry[] {
  const felt = '(?:stiff|rough|brittle|straw|hard|crunch|snap)';
  const protein = '(?:protein|keratin|gelatine?|egg|rice water|reconstructor)';
  const stiff = new RegExp(`\\b${felt}[^;]*${protein}|${protein}[^;]*\\b${felt}`, 'i');
  if (!stiff.test(row.notes ?? '')) return [];
  return ['2026-02-20', '2026-02-10', '2026-02-01'].map((date) => ({
    id: date,
    head: row.id ?? 'head',
    date,
    done: { name: 'with protein', steps: [] },
    feel: { soft: -2, elastic: -2 },
    notes: '',
  }));
}

const numberWords: Record<string, number> = {
  once: 1,
  one: 1,
  twice: 2,
  two: 2,
  second: 2,
  three: 3,
  third: 3,
  four: 4,
  fourth: 4,
  five: 5,
  fifth: 5,
  six: 6,
  ten: 10,
};
const numeral = `(\\d+|${Object.keys(numberWords).join('|')})`;
const numberOf = (word: string) => numberWords[word] ?? Number(word);

/** Days between washes, as the notes tell them; undefined where they do not. */
export function washEveryOf(notes: string): number | undefined {
  const text = notes.toLowerCase();
  const found = (source: string) => new RegExp(source).exec(text);
  const spans: [string, (n: number) => number][] = [
    [`every ${numeral} days?`, (n) => n],
    [`every ${numeral} weeks?`, (n) => 7 * n],
    [`${numeral}(?:x| times)? (?:a |per |each )?week(?:ly)?`, (n) => 7 / n],
    [`${numeral}(?:x| times)? (?:a |per |each )?month(?:ly)?`, (n) => 30 / n],
  ];
  if (found('every other day')) return 2;
  if (found('fortnight|every other week')) return 14;
  for (const [source, days] of spans) {
    const met = found(source);
    if (met) return days(numberOf(met[1]!));
  }
  if (found('every (?:single )?day|\\bdaily\\b|each day')) return 1;
  if (found('every week|\\bweekly\\b')) return 7;
  return found('monthly') ? 30 : undefined;
}
