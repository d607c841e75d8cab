// What a label says beside its list of names, in the words in which labels say it (written from memory).
import { describe, expect, it } from 'vitest';
import { answerFor, fitProduct } from '../../src/core/judge/fit.ts';
import type { Allergen } from '../../src/core/names/entry.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { lookup } from '../use/knowing.ts';
import { head, practice } from './hand-read.ts';

const list = 'Aqua, Glycerin, Cetearyl Alcohol, Parfum';
const after = (words: string) => readLabel(`${list}. ${words}`, lookup);

it.each<[string, Allergen[], Allergen[]]>([
  ['Contains egg.', ['egg'], []],
  ['Contains: Egg, Milk', ['egg', 'milk'], []],
  ['Contains wheat and soy', ['wheat', 'soy'], []],
  ['Allergens: sesame', ['sesame'], []],
  ['May contain traces of nuts.', [], ['nut']],
  ['Contains traces of peanut', [], ['peanut']],
  ['Contains egg, may contain traces of nuts.', ['egg'], ['nut']],
  ['Enthält Ei.', ['egg'], []],
  ['Kann Spuren von Soja enthalten.', [], ['soy']],
  ['Contient du lait', ['milk'], []],
  ['Peut contenir des traces de lait', [], ['milk']],
  ['Contiene huevo', ['egg'], []],
  ['Puede contener trazas de soja.', [], ['soy']],
  ['Contém leite', ['milk'], []],
  ['Pode conter soja', [], ['soy']],
])('%s', (words, says, mayBe) => {
  const { statements = [] } = after(words);
  expect(statements.flatMap(({ allergens }) => allergens)).toEqual(says);
  expect(statements.flatMap((each) => each.mayBe)).toEqual(mayBe);
  for (const { raw, from, to } of statements) expect(`${list}. ${words}`.slice(from, to)).toBe(raw);
});

it.each([
  'Contains no egg.',
  'Does not contain milk.',
  'Enthält kein Soja.',
  'Contient pas de lait',
  'Sin huevo',
  'Free from nuts',
  'Contains natural ingredients',
  'Egg free',
])('nothing is said by: %s', (words) => expect(after(words).statements).toBeUndefined());

it('a statement is no mention: shares and what was read stay', () => {
  const said = after('Contains egg.');
  const plain = readLabel(list, lookup);
  expect(said.mentions.map(({ found, share }) => [found, share])).toEqual(
    plain.mentions.map(({ found, share }) => [found, share]),
  );
  expect(said.read).toBe(plain.read);
});

describe('the avoid list', () => {
  const answer = (words: string, family: Allergen) =>
    answerFor(
      fitProduct(
        { reading: after(words), kind: 'gel' },
        { practice, head: head({ avoid: [{ id: 'a', family, reacted: false }] }) },
      ),
      'avoid',
    );
  it('counts what a label states', () => {
    expect(answer('Contains egg.', 'egg')).toBe('does-not-suit');
    expect(answer('May contain traces of nuts.', 'nut')).toBe('cannot-tell');
    expect(answer('Contains egg.', 'milk')).toBe('suits');
    expect(answer('Contains no egg.', 'egg')).toBe('suits');
  });
});

it('a long text is searched in no time', () => {
  const text = 'kann '.repeat(4000) + 'contains '.repeat(2000);
  const began = performance.now();
  lookup.remarks.statementsIn(text);
  expect(performance.now() - began).toBeLessThan(1000);
});
