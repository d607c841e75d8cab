import type { Holder, PageText } from '../contract/messages.ts';
import type { Finder } from './finder.ts';
import { isKnownKind } from './names/kinds.ts';
import type { CutStep, Item } from './names/step.ts';
import type { Page } from './text/lines.ts';
import { around, blockAt, upFrom } from './text/page-text.ts';

const closeLines = 2; // a name more lines on begins another list

const mostLevels = 8; // elements around a name within its row or item

const mostBoxed = 4; // elements around a name up to the box that holds it and the next one

const mostNested = 3; // elements between an item and the list around its own

const mostWrapped = 3; // words of a name's second half

/** Whether the list goes on with `next`. */
export function joins(page: Page, run: Item[], next: Item, finder: Finder): boolean {
  const { stream, text } = page;
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
  const [lastMany, nextMany] = [isOneOfMany(page, last), isOneOfMany(page, next)];
  const beside = down === 1 && isKnownKind(last.kind) && isKnownKind(next.kind);
  if (nextMany && next.kind === 'water') return false;
  if (!sameKin(stream, last.from, next.from) && !(beside && inOneBox(stream, last.from, next.from)))
    return false;
  if (!lastMany) return !nextMany || run.filter(({ kind }) => isKnownKind(kind)).length * 2 > run.length;
  if (nextMany && blockAt(stream, last.from) === blockAt(stream, next.from)) return true;
  return nextMany ? isKnownKind(next.kind) : down === 1 && isKnownKind(next.kind);
}

/** Whether several names stand in a line, marks within brackets aside. */
function isOneOfMany({ text, lines }: Page, { line }: Item): boolean {
  const { from, to } = lines[line]!;
  const letters = text.slice(from, Math.min(to, from + 400)).replace(/\([^)]{0,200}\)/g, '');
  return letters.split(/[,;•·]/).length > 2;
}

/** Whether two cells of a table, or a hidden block and one that shows, hold a list each: what heads the one heads the other. */
export function isBeside(page: Page, last: Item | undefined, next: Item): boolean {
  if (!last || last.line === next.line) return false;
  const [one, other] = [last, next].map(({ from }) => blockAt(page.stream, from));
  const apart = one !== other && (one?.tag === 'td' || one?.hidden !== other?.hidden);
  return apart && isOneOfMany(page, last) && isOneOfMany(page, next);
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
export const beginsAnew = (run: Item[], next: Item, second: CutStep | undefined): boolean =>
  run.length > 2 &&
  next.line > run.at(-1)!.line &&
  next.name === run[0]!.name &&
  second !== undefined &&
  'name' in second &&
  second.name === run[1]!.name;

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks; no two panels. */
function sameKin(stream: PageText, a: number, b: number): boolean {
  const [one, other] = [blockAt(stream, a), blockAt(stream, b)];
  let [first, second] = [one, other];
  for (let level = 0; level < mostLevels && first && second; level++) {
    if (first === second) return true;
    if (first.tag !== second.tag || first.role === 'tabpanel' || first.tag === 'details') break;
    first = around(stream, first);
    second = around(stream, second);
  }
  return isNested(stream, one, other) || isNested(stream, other, one);
}

/** Whether an item stands in a list that stands within the list of another one. */
function isNested(stream: PageText, inner: Holder | undefined, outer: Holder | undefined): boolean {
  const list = outer?.tag === 'li' && around(stream, outer);
  const own = list && inner?.tag === 'li' ? around(stream, inner) : undefined;
  return own !== list && [...upFrom(stream, own, mostNested)].some((element) => element === list);
}

/** Whether two places stand in one box, built differently: a name set apart, one without a paragraph of its own. */
function inOneBox(stream: PageText, a: number, b: number): boolean {
  const [one, other] = [a, b].map((at) => [...upFrom(stream, blockAt(stream, at), mostBoxed)]);
  const box = one!.find((element) => other!.includes(element));
  const apart = [...upTo(one!, box), ...upTo(other!, box)];
  return box !== undefined && !apart.some(({ tag, role }) => role === 'tabpanel' || ofAnotherKind.test(tag));
}

/** Elements that say what their letters are to those beside them. */
const ofAnotherKind = /^(?:h[1-6]|d[dt]|t[dh]|details|summary|figcaption|label)$/;

const upTo = (elements: Holder[], end: Holder | undefined): Holder[] =>
  end ? elements.slice(0, elements.indexOf(end)) : elements;
