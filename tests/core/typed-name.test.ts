// A list that is being typed: where a name stands, and what is put in its place.
import { describe, expect, it } from 'vitest';
import { typedNameAt, withName } from '../../src/core/label/typed-name.ts';

// `|` is where one types.
it.each([
  ['Aqua, Glyc|', 'Glyc'],
  ['Aqua, Gl|yc, Parfum', 'Glyc'],
  ['|', ''],
  ['Aqua,|', ''],
  ['Aqua, 1,2-Hex|', '1,2-Hex'],
  ['Aqua;  Panth|', 'Panth'],
  ['Aqua\nPanth|', 'Panth'],
  ['Aqua • Panth|', 'Panth'],
  ['|Aqua, Glycerin', 'Aqua'],
])('%s types %j', (said, typed) => {
  const at = said.indexOf('|');
  expect(typedNameAt(said.replace('|', ''), at).typed).toBe(typed);
});

describe('a name that is taken', () => {
  it.each([
    ['Aqua, Glyc|', 'Glycerin', 'Aqua, Glycerin, |'],
    ['Aqua, Gl|yc, Parfum', 'Glycerin', 'Aqua, Glycerin|, Parfum'],
    ['1,2-Hex|', '1,2-Hexanediol', '1,2-Hexanediol, |'],
  ])('%s + %s = %s', (said, name, wanted) => {
    const at = said.indexOf('|');
    const text = said.replace('|', '');
    const next = withName(text, typedNameAt(text, at), name);
    expect(`${next.text.slice(0, next.at)}|${next.text.slice(next.at)}`).toBe(wanted);
  });
});
