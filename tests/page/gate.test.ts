// A long page is looked through in pieces, and what is found is what one look over all of it would find.
import { expect, it } from 'vitest';
import { spanning } from '../../src/page/read/gate.ts';
import { finished } from '../../src/page/read/in-slices.ts';
import { spent } from '../spent.ts';

const piece = 200_000;
const list = 'Ingredients: Aqua, Glycerin, Cetearyl Alcohol, Panthenol, Phenoxyethanol.';

it.each([-200, -40, -13, -3, -1, 0, 1])('a list %i letters before a seam is found as elsewhere', (before) => {
  const found = (at: number) => {
    const text = '-'.repeat(at) + list + '-'.repeat(2 * piece);
    return finished(spanning(text)).map(([from, to]) => [from - at, to - at]);
  };
  expect(found(1000)).toHaveLength(1);
  expect(found(piece + before)).toEqual(found(1000));
});

it('a word that is a stem by its end alone is none where a piece ends', () => {
  const text = `${'-'.repeat(piece - 60)}glycerin and ${'-'.repeat(44)}incipient${'-'.repeat(piece)}`;
  expect(finished(spanning(text))).toEqual([]);
});

it('no piece of six million letters without a name takes long', () => {
  const text = 'wordless bricks of the shelf '.repeat(206_000);
  const longest = () => {
    let most = 0;
    for (const looking = spanning(text); ; ) {
      let done: boolean | undefined;
      most = Math.max(
        most,
        spent(() => (done = looking.next().done)),
      );
      if (done) return most;
    }
  };
  expect(Math.min(longest(), longest(), longest())).toBeLessThan(50); // ms: the aim for a task in a page
});
