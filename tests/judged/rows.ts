// Rows of judged cases: tab-separated files with one header line, and the printed forms their cells take.
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** A row by its column names. */
export type Row = Record<string, string>;
export type Rows = ReadonlyMap<string, Row> | Readonly<Record<string, Row>> | readonly Row[];

const root = resolve(import.meta.dirname, '../..');

/** The folder whose rows are scored: another one may be named. */
export const judgedFolder = resolve(root, process.env.STRANDLINE_JUDGED ?? '../shared/data/judged');

/** Absent files are no rows; the caller says so. */
export function readRows(table: string, folder = judgedFolder): Row[] | undefined {
  const file = resolve(folder, `${table}.tsv`);
  if (!existsSync(file)) return undefined;
  const [head = '', ...lines] = readFileSync(file, 'utf8')
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .filter((line) => line !== '');
  const columns = head.split('\t');
  return lines.map((line) => {
    const cells = line.split('\t');
    return Object.fromEntries(columns.map((column, at) => [column, cells[at]?.trim() ?? '']));
  });
}

/** A row by its `id`, from a map, an object by id or a plain list of rows. */
export function rowOf(rows: Rows, id: string): Row | undefined {
  if (rows instanceof Map) return rows.get(id);
  if (Array.isArray(rows)) return rows.find((row) => row.id === id);
  return (rows as Readonly<Record<string, Row>>)[id];
}

/** `none` and nothing are both no words. */
export const wordsOf = (cell: string | undefined): string[] =>
  (cell ?? '')
    .split(';')
    .map((word) => word.trim())
    .filter((word) => word !== '' && word !== 'none' && word !== 'nothing');

/** `a|b`: either is right. */
export const eitherOf = (cell: string | undefined): string[] =>
  (cell ?? '').split('|').map((word) => word.trim());

/** One step of a printed day: `kind:label`, with `/n` for every n-th wash. */
export type PlannedStep = { kind: string; label: string; every: number };

export function stepsOf(printed: string | readonly (string | Partial<PlannedStep>)[]): PlannedStep[] {
  const list = typeof printed === 'string' ? wordsOf(printed) : printed;
  return list.map((step) => {
    if (typeof step !== 'string')
      return { kind: step.kind ?? '', label: step.label ?? '', every: step.every ?? 1 };
    const [, kind = '', label = '', every] = /^([^:]+):([^/]*)(?:\/(\d+))?$/.exec(step.trim()) ?? [];
    return { kind: kind.trim(), label: label.trim(), every: Number(every ?? 1) };
  });
}
