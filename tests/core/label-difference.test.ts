import fc from 'fast-check';
import { expect, it } from 'vitest';
import { labelDifference } from '../../src/core/label/difference.ts';
import type { Mention } from '../../src/core/reading/reading.ts';

const part = (name: string, raw = name): Pick<Mention, 'raw' | 'found' | 'moisture'> => ({
  raw,
  found: name.startsWith('?') ? { how: 'none', close: [] } : { how: 'exact', name },
  moisture: [],
});
const label = (names: string) => names.split(' ').map((name) => part(name));
const told = (before: string, after: string) => {
  const { added, removed, moved } = labelDifference(label(before), label(after));
  return {
    added: added.map(({ raw }) => raw).join(' '),
    removed: removed.map(({ raw }) => raw).join(' '),
    moved: moved.map(({ mention, up }) => `${mention.raw} ${up ? 'up' : 'down'}`).join(', '),
  };
};

it.each([
  ['a b c', 'a b c', '', '', ''],
  ['a b c', 'a b c soy', 'soy', '', ''],
  ['a b c', 'a c', '', 'b', ''],
  ['a b c d', 'd a b c', '', '', 'd up'],
  ['a b c d', 'a x c b', 'x', 'd', 'c up'],
  ['a ?q', 'a ?r', '?r', '?q', ''],
  ['a b a', 'a b', '', '', ''],
])('%s → %s', (before, after, added, removed, moved) => {
  expect(told(before, after)).toEqual({ added, removed, moved });
});

it('a new spelling of the same name is no change', () => {
  const { added, removed, moved } = labelDifference([part('Aqua', 'Aqua')], [part('Aqua', 'Water (Aqua)')]);
  expect([added, removed, moved]).toEqual([[], [], []]);
});

it('what it tells turns one label into the other', () => {
  const names = fc.uniqueArray(fc.constantFrom(...'abcdefghij'), { minLength: 1 });
  fc.assert(
    fc.property(names, names, (before, after) => {
      const { added, removed, moved } = labelDifference(
        before.map((name) => part(name)),
        after.map((name) => part(name)),
      );
      const gone = new Set([...removed, ...moved.map(({ mention }) => mention)].map(({ raw }) => raw));
      const come = new Set([...added, ...moved.map(({ mention }) => mention)].map(({ raw }) => raw));
      expect(before.filter((name) => !gone.has(name))).toEqual(after.filter((name) => !come.has(name)));
      expect(
        labelDifference(
          after.map((name) => part(name)),
          after.map((name) => part(name)),
        ),
      ).toEqual({ added: [], removed: [], moved: [] });
    }),
  );
});
