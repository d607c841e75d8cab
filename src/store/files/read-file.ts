import { findNodeAtLocation, getNodeValue, type Node, type ParseError, parseTree } from 'jsonc-parser';
import type * as z from 'zod/mini';
import type { Said } from '../../core/judge/finding.ts';
import { things } from '../remembered.ts';
import { idOf } from '../schema/contents.ts';
import { currentVersion, isRecord, migrate, type Raw } from '../schema/migrations.ts';
import { schemaOf } from '../schema/schemas.ts';
import { type Everything, everythingSchema } from './everything.ts';
import { pathWords } from './path-words.ts';

/** One thing wrong with a file: where (1-based), and what, as a word key under `keeping.issue.`. */
export type FileIssue = { line: number; column: number; path: string; said: Said };

export type FileReading = { ok: true; everything: Everything } | { ok: false; issues: FileIssue[] };

const mostIssues = 50;

/** Reads an export of any version. Never throws; a bad file is told line by line and gives nothing. */
export function readFile(text: string): FileReading {
  const plain = text.replace(/^\uFEFF/, '');
  const at = places(plain);
  const fail = (offset: number, path: string, said: Said): FileReading => ({
    ok: false,
    issues: [{ ...at(offset), path, said }],
  });
  const errors: ParseError[] = [];
  let tree: Node | undefined;
  try {
    tree = parseTree(plain, errors, { disallowComments: true, allowTrailingComma: false });
  } catch {
    return fail(0, '', { key: 'keeping.issue.too-deep' }); // nested beyond what can be walked
  }
  const [first] = errors;
  if (first || !tree) return fail(first?.offset ?? 0, '', { key: 'keeping.issue.not-json' });
  const value: unknown = getNodeValue(tree);
  if (!isRecord(value) || value.strandline !== 'everything')
    return fail(tree.offset, '', { key: 'keeping.issue.not-ours' });
  const said = value.version;
  const version = typeof said === 'number' || typeof said === 'string' ? Number(said) : Number.NaN;
  if (!Number.isInteger(version) || version < 1)
    return fail(offsetOf(tree, ['version']), 'version', { key: 'keeping.issue.no-version' });
  if (version > currentVersion)
    return fail(offsetOf(tree, ['version']), 'version', {
      key: 'keeping.issue.newer',
      values: { version, known: currentVersion },
    });
  try {
    return check(value, version, (path) => ({ ...at(offsetOf(tree, path)), path: pathWords(path) }));
  } catch {
    return fail(tree.offset, '', { key: 'keeping.issue.too-much' });
  }
}

type Path = (string | number)[];

function check(value: Raw, version: number, where: (path: Path) => Omit<FileIssue, 'said'>): FileReading {
  const issues: FileIssue[] = [];
  const full = () => issues.length >= mostIssues;
  const tell = (path: Path, said: Said) => {
    if (!full()) issues.push({ ...where(path), said });
  };
  const document: Raw = {
    photos: {},
    labelsMet: [],
    aside: [],
    ...migrate(value, version, (key) => {
      const [thing, index] = key.split(':');
      tell([thing!, Number(index)], { key: 'keeping.issue.invalid_element' });
    }),
    version: currentVersion,
  };
  const read = (schema: z.ZodMiniType, of: unknown, at: Path): unknown => {
    const result = schema.safeParse(of);
    for (const issue of result.error?.issues ?? []) {
      const expected = 'expected' in issue ? String(issue.expected) : undefined;
      tell([...at, ...(issue.path as Path)], {
        key: `keeping.issue.${issue.code}`,
        ...(expected && { values: { expected } }),
      });
    }
    return result.data;
  };
  // Thing by thing: of 200,000 wrong ones the first few are told, and the rest is not looked at.
  const lists = things.flatMap((thing) => (Array.isArray(document[thing]) ? [thing] : []));
  const whole = read(
    everythingSchema,
    { ...document, ...Object.fromEntries(lists.map((of) => [of, []])) },
    [],
  );
  for (const thing of lists) {
    const seen = new Set<unknown>();
    const items: unknown[] = [];
    for (const [index, item] of (document[thing] as unknown[]).entries()) {
      if (full()) break;
      const thingRead = read(schemaOf[thing], item, [thing, index]);
      if (thingRead === undefined) continue;
      items.push(thingRead);
      const id = idOf(thing, thingRead as never);
      if (seen.has(id)) tell([thing, index], { key: 'keeping.issue.twice' });
      seen.add(id);
    }
    if (isRecord(whole)) whole[thing] = items;
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, everything: whole as Everything };
}

/** Where a path's value begins; where there is none, the nearest value around it. */
function offsetOf(tree: Node, path: Path): number {
  for (let length = path.length; length > 0; length--) {
    const node = findNodeAtLocation(tree, path.slice(0, length));
    if (node) return node.offset;
  }
  return tree.offset;
}

/** Offset → line and column, counted from 1, over the line ends of any system. */
function places(text: string): (offset: number) => { line: number; column: number } {
  const starts = [0];
  for (const match of text.matchAll(/\r\n|\r|\n/g)) starts.push(match.index + match[0].length);
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - starts[low]! + 1 };
  };
}
