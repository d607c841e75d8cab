import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import type { Allowance, DamageKind, Head, Porosity, Thickness } from '../../src/core/hair/head.ts';
import { allowanceOf, allowances } from '../../src/core/hair/tolerance.ts';
import type { Feel, LogEntry } from '../../src/core/wash-day/routine.ts';

const today = '2026-03-01';
const head = (over: Partial<Head> = {}): Head => ({
  id: 'h',
  name: 'Wren',
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-01-01',
  ...over,
});
const read = (over: Partial<Head>, log: LogEntry[] = []) =>
  allowanceOf(head(over), practice.allowance, { today, log });
const rank = (level: Allowance | undefined) => allowances.indexOf(level!);

// Every row is common practice: a rule of the trade without a published source.
const table: [says: string, over: Partial<Head>, level: Allowance][] = [
  ['coarse + low porosity is the most careful case', { thickness: 'coarse', porosity: 'low' }, 'rarely'],
  ['fine + high porosity gains most', { thickness: 'fine', porosity: 'high' }, 'often'],
  ['the middle of both', { thickness: 'medium', porosity: 'medium' }, 'some'],
  ['fine hair welcomes more', { thickness: 'fine', porosity: 'medium' }, 'regular'],
  ['low porosity less', { thickness: 'medium', porosity: 'low' }, 'sparingly'],
  [
    'bleached hair welcomes more',
    {
      thickness: 'medium',
      porosity: 'medium',
      damage: { kinds: ['bleach'], length: 'most', recent: 'weeks' },
    },
    'regular',
  ],
  [
    'so does coloured hair',
    {
      thickness: 'medium',
      porosity: 'medium',
      damage: { kinds: ['permanent-colour'], length: 'most', recent: 'weeks' },
    },
    'regular',
  ],
  [
    'and heat-styled hair',
    {
      thickness: 'coarse',
      porosity: 'medium',
      damage: { kinds: ['heat'], length: 'most', recent: 'weeks' },
    },
    'some',
  ],
  [
    'several kinds add up, to two steps at most',
    {
      thickness: 'coarse',
      porosity: 'low',
      damage: { kinds: ['bleach', 'relaxer', 'heat', 'perm'], length: 'most', recent: 'weeks' },
    },
    'some',
  ],
  [
    'a stiff strand lowers it',
    {
      thickness: 'medium',
      porosity: 'medium',
      stretch: [{ id: 's', date: '2026-02-20', rest: 100, stretched: 115, broke: true }],
    },
    'sparingly',
  ],
  [
    'a limp strand raises it',
    {
      thickness: 'medium',
      porosity: 'medium',
      stretch: [{ id: 's', date: '2026-02-20', rest: 100, stretched: 170, broke: true }],
    },
    'regular',
  ],
  [
    'a springy strand leaves it',
    {
      thickness: 'medium',
      porosity: 'medium',
      stretch: [{ id: 's', date: '2026-02-20', rest: 100, stretched: 125, after: 101, broke: false }],
    },
    'some',
  ],
  [
    'only the newest test counts',
    {
      thickness: 'medium',
      porosity: 'medium',
      stretch: [
        { id: 'old', date: '2026-02-01', rest: 100, stretched: 115, broke: true },
        { id: 'new', date: '2026-02-20', rest: 100, stretched: 125, after: 101, broke: false },
      ],
    },
    'some',
  ],
  ['what the reader sets wins', { thickness: 'fine', porosity: 'high', allowanceByHand: 'rarely' }, 'rarely'],
  ['even where nothing else is known', { allowanceByHand: 'some' }, 'some'],
];

describe('allowance, common practice', () => {
  it.each(table)('%s', (_says, over, level) => {
    expect(read(over).level).toBe(level);
  });

  it('large proteins are least welcome on coarse and on low-porosity hair', () => {
    for (const thickness of ['fine', 'medium', 'coarse'] as const)
      for (const porosity of ['low', 'medium', 'high'] as const) {
        const { level, numbers } = read({ thickness, porosity });
        if (thickness === 'coarse' || porosity === 'low') expect(numbers!.large).not.toBe('welcome');
        if (level === 'rarely') expect(numbers!.large).toBe('unwelcome');
      }
  });

  it('a strengthening treatment comes about once a week at most, at every level', () => {
    for (const level of allowances)
      expect(practice.allowance.levels[level].daysBetweenTreatments).toBeGreaterThanOrEqual(7);
  });

  it('of cream and gel one with protein is enough, unless the hair is very damaged', () => {
    for (const level of allowances)
      expect(practice.allowance.levels[level].leaveOns).toBeLessThanOrEqual(level === 'often' ? 2 : 1);
  });

  it('the scale is a scale: no number falls from one level to the next', () => {
    const numbers = allowances.map((level) => practice.allowance.levels[level]);
    for (const [i, next] of numbers.slice(1).entries()) {
      expect(next.products).toBeGreaterThanOrEqual(numbers[i]!.products);
      expect(next.leaveOns).toBeGreaterThanOrEqual(numbers[i]!.leaveOns);
      expect(next.daysBetweenTreatments).toBeLessThanOrEqual(numbers[i]!.daysBetweenTreatments);
    }
  });
});

const day = (date: string, feel: Feel, of = 'h'): LogEntry => ({
  id: date,
  head: of,
  date,
  done: { name: '', steps: [] },
  feel,
  notes: '',
});
const medium: Partial<Head> = { thickness: 'medium', porosity: 'medium' };

describe('how the last wash days felt', () => {
  // Common practice: soft, not dry, defined and springy was balanced; stiff, rough, brittle had too much protein
  // or too little moisture; limp, mushy, overstretching the reverse.
  it.each<[string, Feel, Allowance]>([
    ['soft, defined and springy was balanced', { soft: 2, springy: 2, defined: 1, dry: 0 }, 'some'],
    ['rough lowers it', { soft: -2 }, 'sparingly'],
    ['brittle lowers it', { elastic: -2 }, 'sparingly'],
    ['limp raises it', { springy: -2 }, 'regular'],
    ['limp and brittle at once says nothing', { springy: -2, elastic: -2 }, 'some'],
  ])('%s', (_says, feel, level) => {
    const log = ['2026-02-01', '2026-02-08', '2026-02-15'].map((date) => day(date, feel));
    expect(read(medium, log).level).toBe(level);
    expect(read({ ...medium, setAside: ['feel'] }, log).level).toBe('some');
  });

  it('needs three days, of this head, not too old', () => {
    const rough = { soft: -2 };
    const two = [day('2026-02-01', rough), day('2026-02-08', rough)];
    expect(read(medium, two).level).toBe('some');
    expect(read(medium, [...two, day('2026-02-15', rough, 'other')]).level).toBe('some');
    expect(read(medium, [...two, day('2025-02-15', rough)]).level).toBe('some');
  });

  it('moves by one step at most, however many days agree', () => {
    const log = Array.from({ length: 9 }, (_, i) => day(`2026-02-0${i + 1}`, { soft: -2, elastic: -2 }));
    expect(read(medium, log).level).toBe('sparingly');
  });
});

describe('reasons', () => {
  it('each can be set aside and put back', () => {
    const damage = { kinds: ['bleach'] as DamageKind[], length: 'most' as const, recent: 'weeks' as const };
    const kept = read({ ...medium, damage });
    expect(kept.reasons.map(({ id, steps, setAside }) => [id, steps, setAside])).toEqual([
      ['hair', 0, false],
      ['damage-bleach', 1, false],
    ]);
    const aside = read({ ...medium, damage, setAside: ['damage-bleach'] });
    expect(aside.level).toBe('some');
    expect(aside.reasons[1]!.setAside).toBe(true);
  });

  it('cannot tell without thickness or porosity, and says which', () => {
    expect(read({ thickness: 'fine' })).toMatchObject({
      reasons: [],
      unknown: [{ key: 'hair.unknown.porosity' }, { key: 'hair.unknown.damage' }],
    });
    expect(read({}).level).toBeUndefined();
  });

  it('without thickness or porosity tells the least and the most it can be, and every answer lies between', () => {
    expect(read({ thickness: 'coarse' }).between).toEqual({ least: 'rarely', most: 'some' });
    expect(read({ porosity: 'high' }).between).toEqual({ least: 'some', most: 'often' });
    expect(read({}).between).toEqual({ least: 'rarely', most: 'often' });
    expect(read(medium).between).toBeUndefined();
    fc.assert(
      fc.property(anyHead, fc.boolean(), fc.boolean(), ({ kinds: some, length, age, ...rest }, t, p) => {
        const whole = { ...rest, damage: damage(some, length, age) };
        const { thickness: _t, porosity: _p, ...bare } = whole;
        const between = read({
          ...bare,
          ...(t && { thickness: rest.thickness }),
          ...(p && !t && { porosity: rest.porosity }),
        }).between!;
        const level = rank(read(whole).level);
        expect(level).toBeGreaterThanOrEqual(rank(between.least));
        expect(level).toBeLessThanOrEqual(rank(between.most));
      }),
    );
  });

  it('an old test is shown, not counted', () => {
    const stretch = [{ id: 's', date: '2025-01-01', rest: 100, stretched: 110, broke: true }];
    expect(read({ ...medium, stretch })).toMatchObject({ level: 'some' });
    expect(read({ ...medium, stretch }).unknown.map(({ key }) => key)).toContain('hair.unknown.stretch-old');
  });

  it('by hand keeps what the answers come to beside it', () => {
    expect(read({ ...medium, allowanceByHand: 'often' })).toMatchObject({
      level: 'often',
      byReasons: 'some',
      byHand: true,
    });
  });
});

const kinds: DamageKind[] = ['bleach', 'permanent-colour', 'relaxer', 'perm', 'heat', 'sun-or-salt'];
const thickness: Thickness[] = ['fine', 'medium', 'coarse'];
const porosity: Porosity[] = ['low', 'medium', 'high'];
const lengths = [undefined, 'ends', 'half', 'most'] as const;
const ages = [undefined, 'longer', 'months', 'weeks'] as const;
const anyHead = fc.record({
  thickness: fc.constantFrom(...thickness),
  porosity: fc.constantFrom(...porosity),
  kinds: fc.subarray(kinds),
  length: fc.nat(3),
  age: fc.nat(3),
  setAside: fc.subarray(['hair', ...kinds.map((kind) => `damage-${kind}`)]),
});
const damage = (of: DamageKind[], length: number, age: number): NonNullable<Head['damage']> => ({
  kinds: of,
  ...(lengths[length] && { length: lengths[length] }),
  ...(ages[age] && { recent: ages[age] }),
});

describe('whatever the head', () => {
  it('worse damage never lowers the allowance', () => {
    fc.assert(
      fc.property(
        anyHead,
        fc.subarray(kinds),
        fc.nat(3),
        fc.nat(3),
        ({ kinds: some, length, age, ...rest }, more, longer, newer) => {
          const mild = read({ ...rest, damage: damage(some, length, age) });
          const worse = read({
            ...rest,
            damage: damage([...some, ...more], Math.max(length, longer), Math.max(age, newer)),
          });
          expect(rank(worse.level)).toBeGreaterThanOrEqual(rank(mild.level));
          expect(rank(mild.level)).toBeGreaterThanOrEqual(rank(read(rest).level));
        },
      ),
    );
  });

  it('a coarser or less porous head never raises it', () => {
    fc.assert(
      fc.property(anyHead, fc.nat(2), fc.nat(2), ({ kinds: some, length, age, ...rest }, t, p) => {
        const with_ = { ...rest, damage: damage(some, length, age) };
        const coarser = thickness[Math.max(t, thickness.indexOf(rest.thickness))]!;
        const tighter = porosity[Math.min(p, porosity.indexOf(rest.porosity))]!;
        const before = rank(read(with_).level);
        expect(rank(read({ ...with_, thickness: coarser }).level)).toBeLessThanOrEqual(before);
        expect(rank(read({ ...with_, porosity: tighter }).level)).toBeLessThanOrEqual(before);
      }),
    );
  });
});
