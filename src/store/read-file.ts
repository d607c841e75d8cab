import { findNodeAtLocation, getNodeValue, type Node, type ParseError, parseTree } from 'jsonc-parser';
import type { Said } from '../core/judge/finding.ts';
import { type Everything, everythingSchema } from './everything.ts';
import { currentVersion, migrate, type Raw } from './migrations.ts';
import { things } from './remembered.ts';

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
  const version = Number(value.version);
  if (!Number.isInteger(version) || version < 1)
    return fail(offsetOf(tree, ['version']), 'version', { key: 'keeping.issue.no-version' });
  if (version > currentVersion)
    return fail(offsetOf(tree, ['version']), 'version', {
      key: 'keeping.issue.newer',
      values: { version, known: currentVersion },
    });
  return check(value, version, (path) => ({ ...at(offsetOf(tree, path)), path: pathWords(path) }));
}

type Path = (string | number)[];

function check(value: Raw, version: number, where: (path: Path) => Omit<FileIssue, 'said'>): FileReading {
  const issues: FileIssue[] = [];
  const document = {
    photos: {},
    aside: [],
    ...migrate(value, version, (key) => {
      const [thing, index] = key.split(':');
      issues.push({ ...where([thing!, Number(index)]), said: { key: 'keeping.issue.invalid_element' } });
    }),
    version: currentVersion,
  };
  const result = everythingSchema.safeParse(document);
  for (const issue of result.error?.issues ?? []) {
    const expected = 'expected' in issue ? String(issue.expected) : undefined;
    const path = issue.path as Path;
    issues.push({
      ...where(path),
      said: { key: `keeping.issue.${issue.code}`, ...(expected && { values: { expected } }) },
    });
  }
  if (result.success)
    for (const thing of things) {
      const seen = new Set<string>();
      for (const [index, item] of result.data[thing].entries()) {
        const id = 'origin' in item ? item.origin : item.id;
        if (seen.has(id)) issues.push({ ...where([thing, index]), said: { key: 'keeping.issue.twice' } });
        seen.add(id);
      }
    }
  if (issues.length > 0 || !result.success) return { ok: false, issues: issues.slice(0, mostIssues) };
  return { ok: true, everything: result.data as Everything };
}

const isRecord = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Where a path's value begins; where there is none, the nearest value around it. */
function offsetOf(tree: Node, path: Path): number {
  for (let length = path.length; length > 0; length--) {
    const node = findNodeAtLocation(tree, path.slice(0, length));
    if (node) return node.offset;
  }
  return tree.offset;
}

const pathWords = (path: Path) =>
  path.map((part, i) => (typeof part === 'number' ? `[${part}]` : i > 0 ? `.${part}` : part)).join('');

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
