import { endsOf } from './evidence/ends.ts';
import type { JudgedRun } from './evidence/judged.ts';
import {
  explainedKnown,
  fewestExplained,
  fewestExplainedDry,
  fewestTelling,
  outOfOrder,
} from './evidence/thresholds.ts';
import type { Finder } from './finder.ts';
import { isKnownKind, isNameKind } from './names/kinds.ts';
import type { CutStep, Item, Stop } from './names/step.ts';
import type { Page } from './text/lines.ts';
import { around, blockAt, upFrom } from './text/page-text.ts';

const mostName = 100; // letters of a name that is explained
const mostRows = 200;
const told = /\s[-–—]\s|\s?[:：](?=\s)/; // what parts a name from what it does

/**
 * Whole lists that say of each name what it does: rows of a table or of a definition list, or lines with a dash or a
 * colon behind the name, under a heading for ingredients. Each list is its names without what is told of them.
 */
export function* explainedIn(
  page: Page,
  steps: readonly CutStep[],
  last: number,
  finder: Finder,
  about: string,
): Generator<void, JudgedRun[]> {
  const found: JudgedRun[] = [];
  const headings = steps.filter(
    (step): step is Stop => 'stop' in step && step.stop === 'heading' && !step.inline,
  );
  for (const [i, { line }] of headings.entries()) {
    yield;
    const names = rowsBelow(page, line, headings[i + 1] ? headings[i + 1]!.line - 1 : last, finder);
    if (!reads(page, names, finder, about)) continue;
    const ends = names.map((name) => endsOf(page, name, name));
    found.push({
      isList: true,
      names,
      evidence: [{ what: 'each name explained', count: names.length, points: names.length }],
      points: names.length,
      from: ends[0]!.from,
      to: ends.at(-1)!.to,
      parts: ends,
      soft: false,
      headed: 'line',
      forHome: false,
      label: '',
    });
  }
  return found;
}

/** The name at the beginning of every row below a heading, as long as rows are built alike. */
function rowsBelow(page: Page, heading: number, last: number, finder: Finder): Item[] {
  const { stream, low, lines } = page;
  const names: Item[] = [];
  let kind: string | undefined; // how the rows are built
  let row: unknown = rowOf(page, heading)?.element; // a heading within a table stands in a row of its own
  for (let i = heading + 1; i <= last && names.length < mostRows; i++) {
    const { from, to } = lines[i]!;
    if (!low.slice(from, to).trim()) continue;
    const pair = rowOf(page, i);
    if (pair && pair.element === row) continue;
    const block = blockAt(stream, from);
    if (block?.tag === 'dd' && kind === 'dl') continue;
    if (kind === 'card' && block && around(stream, block) === row) continue;
    const dash = told.exec(low.slice(from, Math.min(to, from + mostName)));
    const own = pair ?? (dash ? undefined : cardOf(page, i));
    const built = own?.kind ?? (dash ? 'line' : undefined);
    if (!built || (kind && built !== kind)) break;
    kind = built;
    row = own?.element ?? row;
    const end = built === 'line' ? from + dash!.index : Math.min(to, from + mostName);
    const name = low.slice(from, end).trim();
    const start = from + low.slice(from, end).search(/\S/);
    if (name)
      names.push({
        from: start,
        to: start + name.length,
        line: i,
        name,
        kind: finder.kindOf(name),
        after: 'line',
      });
  }
  // the heads of the columns
  return names.length > 1 && !isNameKind(names[0]!.kind) ? names.slice(1) : names;
}

/** The row of a table, or the pair of a definition list, that a line stands in. */
function rowOf({ stream, lines }: Page, line: number): { kind: string; element: unknown } | undefined {
  for (const element of upFrom(stream, blockAt(stream, lines[line]!.from), 3)) {
    if (element.tag === 'tr') return { kind: 'table', element };
    if (element.tag === 'dt') return { kind: 'dl', element };
    if (element.tag === 'dl' || element.tag === 'table') return undefined;
  }
  return undefined;
}

/** A box that holds a name and, in a block beside it, what it does. */
function cardOf({ stream, low, lines }: Page, line: number): { kind: string; element: unknown } | undefined {
  let next = line + 1;
  while (lines[next] && !low.slice(lines[next]!.from, lines[next]!.to).trim()) next++;
  const [own, other] = [line, next].map((at) => lines[at] && blockAt(stream, lines[at].from));
  if (!own || !other || own === other) return undefined;
  const box = around(stream, own);
  return box && box === around(stream, other) ? { kind: 'card', element: box } : undefined;
}

const sized = /\d\s?(?:ml|cl|fl|oz|g)(?!\p{L})/u; // a page's name with a size is a product's

/** Whether the names of the rows are those of one product: by law they go by amount, so most begin with water. */
function reads({ stream }: Page, names: Item[], { words }: Finder, about: string): boolean {
  const n = names.length;
  const known = names.filter(({ kind }) => isKnownKind(kind)).length;
  const telling = names.filter(({ kind }) => kind === 'own' || kind === 'plant').length;
  if (n < fewestExplained || known < n * explainedKnown || telling < fewestTelling) return false;
  const back = names.filter(({ name }, i) => i > 0 && names[i - 1]!.name > name).length;
  const sorted = back <= n * outOfOrder;
  const linked = names.filter(({ from }) =>
    [...upFrom(stream, blockAt(stream, from), 2)].some(({ tag }) => /^h[1-6]$/.test(tag)),
  );
  if (sorted || linked.length > 0 || words.elsewise.test(about)) return false;
  return (
    names.slice(0, 3).some(({ kind }) => kind === 'water') ||
    (n >= fewestExplainedDry && (words.cosmetic.test(about) || sized.test(about) || telling * 2 >= n))
  );
}
