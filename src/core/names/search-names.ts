import Fuse from 'fuse.js';
import type { Entry } from './entry.ts';
import { normalName } from './normal-form.ts';

/** `printed` is the name or alias that matched, `name` what it stands for. */
export type NameHit = { name: string; printed: string };

const longestQuery = 80; // letters
const shortestFuzzy = 4; // letters: less than this is looked for as it stands

const numbersOf = (normal: string) => normal.match(/\d+/g) ?? [];

/** Numbers must be the ones typed, the last as far as it is typed: PEG-12 is never offered for PEG-19. */
const numbersFit = (query: string[], name: string[]) =>
  query.every((number, i) => (i === query.length - 1 ? name[i]?.startsWith(number) : name[i] === number));

/**
 * Search over every name and alias as it is typed: those that begin with it, those that hold it, then those
 * spelled nearly so, close spellings first. For a person to choose from, never for reading a label. Built on first use.
 */
export function createNameSearch(entries: readonly Entry[], close: (typed: string) => readonly string[]) {
  let rows: { normal: string; hit: NameHit }[] | undefined;
  let fuse: Fuse<{ normal: string; hit: NameHit }> | undefined;
  return (typed: string, most = 12): NameHit[] => {
    const query = normalName(typed.slice(0, longestQuery)).trim();
    if (query.length < 2) return [];
    rows ??= entries.flatMap(({ name, aliases = [] }) =>
      [name, ...aliases].map((printed) => ({ normal: normalName(printed), hit: { name, printed } })),
    );
    const numbers = numbersOf(query);
    const begins = rows.filter(({ normal }) => normal.startsWith(query));
    const holds = rows.filter(({ normal }) => !normal.startsWith(query) && normal.includes(query));
    const plain = [...begins.toSorted(shorter), ...holds.toSorted(shorter)];
    const found = new Map<string, NameHit>();
    const take = (hits: readonly { hit: NameHit }[]) => {
      for (const { hit } of hits) if (found.size < most && !found.has(hit.name)) found.set(hit.name, hit);
    };
    take(plain);
    if (found.size < most)
      take(close(typed.slice(0, longestQuery)).map((name) => ({ hit: { name, printed: name } })));
    if (found.size < most && query.length >= shortestFuzzy) {
      fuse ??= new Fuse(rows, { keys: ['normal'], threshold: 0.34, ignoreLocation: true });
      take(
        fuse
          .search(query.slice(0, 32), { limit: most * 4 })
          .map(({ item }) => item)
          .filter(({ normal }) => numbersFit(numbers, numbersOf(normal))),
      );
    }
    return [...found.values()];
  };
}

const shorter = (a: { normal: string }, b: { normal: string }) => a.normal.length - b.normal.length;
