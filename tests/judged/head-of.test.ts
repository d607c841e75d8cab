import { expect, it } from 'vitest';
import { allergens } from '../../src/core/names/entry.ts';
import { headOf, logOf, washEveryOf } from './head-of.ts';

it.each<[string, number | undefined]>([
  ['washes every 2 days; goes flat', 2],
  ['washes every other day', 2],
  ['washes every third day', 3],
  ['washes once a week', 7],
  ['washes twice weekly', 3.5],
  ['washes 3 times a week', 7 / 3],
  ['swims and washes every day', 1],
  ['daily wash', 1],
  ['washes every two weeks', 14],
  ['once a fortnight', 14],
  ['nothing said of it', undefined],
])('how often: %s', (notes, days) => {
  expect(washEveryOf(notes)).toBe(days);
});

it('what is avoided, and whether there was a reaction', () => {
  const of = (notes: string) =>
    headOf({ id: 'a', notes }).avoid.map(({ family, role, reacted }) => `${family ?? role} ${reacted}`);
  expect(of('washes daily; wheat allergy, has reacted: avoid wheat')).toEqual(['wheat true']);
  expect(of('avoids perfume')).toEqual(['fragrance false']);
  expect(of('avoid sulfates and silicones')).toEqual(['cleansing-strong false', 'film-former false']);
  expect(of('peanut allergy')).toEqual(['peanut true']);
  expect(of('likes almonds')).toEqual([]);
  for (const family of allergens)
    expect(of(`avoid ${family.replaceAll('-', ' ')}`).length).toBeGreaterThan(0);
});

it('what is not told stays open', () => {
  const { thickness, damage } = headOf({ id: 'a', thickness: '', damage: '' });
  expect([thickness, damage]).toEqual([undefined, undefined]);
  expect(headOf({ id: 'a', damage: 'none' }).damage).toEqual({ kinds: [] });
  expect(headOf({ id: 'a', damage: 'bleach+heat:most:months' }).damage).toEqual({
    kinds: ['bleach', 'heat'],
    length: 'most',
    recent: 'months',
  });
  expect(logOf({ id: 'a', notes: 'went stiff after protein' })).toHaveLength(3);
});
