import type { LabelPart } from './split-label.ts';

const shortestRepeat = 3; // names in a row that show a list beginning again
const sameShare = 0.9; // of the shorter list's names, in place, that make two lists the same

/** Lists that begin again get a number of their own; a list printed twice is kept once, the longer copy. */
export function withoutRepeats(parts: LabelPart[]): LabelPart[] {
  const keys = parts.map(({ names, raw }) => (names[0] ?? raw).toLowerCase().replace(/[^\p{L}\d]+/gu, ''));
  const lists: { parts: LabelPart[]; keys: string[] }[] = [];
  for (const [at, part] of parts.entries()) {
    const last = lists.at(-1);
    const again =
      last &&
      part.within === undefined &&
      last.keys.length >= shortestRepeat &&
      last.keys.slice(0, shortestRepeat).every((key, i) => key === keys[at + i]);
    if (!last || again || last.parts.at(-1)!.list !== part.list) lists.push({ parts: [], keys: [] });
    lists.at(-1)!.parts.push(part);
    lists.at(-1)!.keys.push(keys[at]!);
  }
  const kept: typeof lists = [];
  for (const list of lists) {
    const twin = kept.findIndex((other) => isSame(other.keys, list.keys));
    if (twin < 0) kept.push(list);
    else if (list.keys.length > kept[twin]!.keys.length) kept[twin] = list;
  }
  return kept
    .toSorted((a, b) => a.parts[0]!.from - b.parts[0]!.from)
    .flatMap((list, number) => list.parts.map((part) => ({ ...part, list: number })));
}

function isSame(a: string[], b: string[]): boolean {
  const shorter = Math.min(a.length, b.length);
  if (shorter < shortestRepeat) return false;
  let same = 0;
  for (let i = 0; i < shorter; i++) if (a[i] === b[i]) same++;
  return same >= sameShare * shorter && same >= shortestRepeat;
}
