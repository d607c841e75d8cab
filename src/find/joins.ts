import type { PageText } from '../contract/messages.ts';
import type { Finder } from './finder.ts';
import { isKnownKind } from './names/kinds.ts';
import type { Item, Step } from './names/step.ts';
import type { Page } from './text/lines.ts';
import { around, blockAt } from './text/page-text.ts';

const closeLines = 2; // a name more lines on begins another list

const mostWrapped = 3; // words of a name's second half

/** Whether the list goes on with `next`. */
export function joins({ stream, text, lines }: Page, run: Item[], next: Item, finder: Finder): boolean {
  const last = run.at(-1)!;
  if (
    run.length > 3 &&
    next.after !== 'mark' &&
    next.kind === 'water' &&
    run.some(({ kind }) => kind === 'water')
  )
    return false;
  const down = next.line - last.line;
  if (down === 0) return true;
  if (down > closeLines) return false;
  if (
    /^[)*\s]*[,;•·/|&]|[,;•·/|&]\s*$/.test(text.slice(last.to, next.from)) ||
    finder.words.goesOn.begins(next.name)
  )
    return true;
  // several names in a line, marks within brackets aside
  const many = ({ line }: Item) => {
    const { from, to } = lines[line]!;
    return (
      text
        .slice(from, Math.min(to, from + 400))
        .replace(/\([^)]{0,200}\)/g, '')
        .split(/[,;•·]/).length > 2
    );
  };
  const [lastMany, nextMany] = [many(last), many(next)];
  if ((nextMany && next.kind === 'water') || !sameKin(stream, last.from, next.from)) return false;
  if (!lastMany) return !nextMany || run.filter(({ kind }) => isKnownKind(kind)).length * 2 > run.length;
  if (nextMany && blockAt(stream, last.from) === blockAt(stream, next.from)) return true;
  return nextMany ? isKnownKind(next.kind) : down === 1 && isKnownKind(next.kind);
}

/** A name that a line break cuts in two: the dictionary knows the whole, and does not know its second half. */
export function wrapped(last: Item, next: Item, { kindOf, hits }: Finder): Item | undefined {
  if (
    next.line !== last.line + 1 ||
    next.after !== 'line' ||
    (next.kind !== 'other' && next.kind !== 'built')
  )
    return undefined;
  const words = next.name.match(/\p{L}+/gu) ?? [];
  if (
    words.length > mostWrapped ||
    /^[^\p{L}(]/u.test(next.name) ||
    hits(next.name, words.length) < words.length
  )
    return undefined;
  const name = `${last.name} ${next.name}`;
  const kind = kindOf(name);
  return isKnownKind(kind) ? { ...last, to: next.to, name, kind, line: next.line } : undefined;
}

/** A list that is printed once more on a line below: shortened before a button, then in full. */
export const beginsAnew = (run: Item[], next: Item, second: Step | undefined): boolean =>
  run.length > 2 &&
  next.line > run.at(-1)!.line &&
  next.name === run[0]!.name &&
  second !== undefined &&
  'name' in second &&
  second.name === run[1]!.name;

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks; no two panels. */
function sameKin(stream: PageText, a: number, b: number): boolean {
  let first = blockAt(stream, a);
  let second = blockAt(stream, b);
  for (let level = 0; level < 4 && first && second; level++) {
    if (first === second) return true;
    if (first.tag !== second.tag || first.role === 'tabpanel' || first.tag === 'details') return false;
    first = around(stream, first);
    second = around(stream, second);
  }
  return false;
}
