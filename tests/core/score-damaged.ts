// How damaged names are read: right, wrong or left unknown, by kind of damage. Used by the test and `npm run coverage`.
import type { Lookup } from '../../src/core/names/lookup.ts';
import { keyOf, normalName } from '../../src/core/names/normal-form.ts';
import { type Mention, readLabel } from '../../src/core/reading/reading.ts';
import type { Damaged } from './damaged-names.ts';

/** silent: found under another name by the dictionary itself, without mending. */
export type Verdict = 'right' | 'wrong' | 'silent' | 'left';
export type Scored = Damaged & { verdict: Verdict; mended: boolean; protein: boolean; said: string };

const head = 'Water, Citric Acid, ';
const plain = (name: string) => keyOf(normalName(name.replace(/\([^()]*\)/g, ' ')));
const nameIn = ({ found }: Mention) => (found.how === 'none' ? '' : plain(found.name));

/** Reads each damaged name in the middle of a label of known names. */
export function scored(rows: readonly Damaged[], lookup: Lookup): Scored[] {
  return rows.map((row) => {
    const truth = row.truth.map((name) => lookup.find(name));
    const wanted = truth.map((found) => (found.how === 'none' ? '' : plain(found.name)));
    const [from, to] = [head.length, head.length + row.printed.length];
    const got = readLabel(`${head}${row.printed}, Parfum, Linalool`, lookup).mentions.filter(
      (mention) => mention.from < to && mention.to > from,
    );
    const mended = got.filter(({ found }) => found.how === 'mended');
    const kinds = new Set(truth.map((found) => lookup.known(found).protein?.kind));
    return {
      ...row,
      verdict: verdictOf(got, mended, wanted),
      mended: mended.length > 0,
      protein: mended.some(({ protein }) => protein && !kinds.has(protein.kind)),
      said: got.map(({ raw, found }) => `${raw}: ${found.how === 'none' ? '?' : found.name}`).join(' | '),
    };
  });
}

function verdictOf(got: Mention[], mended: Mention[], wanted: string[]): Verdict {
  if (got.map(nameIn).join('|') === wanted.join('|')) return 'right';
  if (mended.some((mention) => !wanted.includes(nameIn(mention)))) return 'wrong';
  return mended.length > 0 || got.length === 0 || got.some(({ found }) => found.how === 'none')
    ? 'left'
    : 'silent';
}
