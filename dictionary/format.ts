/** The one layout of dictionary files: one entry a line, sorted by name, fields in the order of the schema. */
import type { z } from 'zod';
import type { UseLevels } from '../src/core/amounts/use-levels.ts';
import type { Limits } from '../src/core/names/entry.ts';
import { entrySchema, patternSchema, sourceWordsSchema } from './schema.ts';

/** Text of a family file. `format(parse(text)) === text` holds for every file: the tool is the only writer. */
export function formatEntries(entries: readonly { name: string }[]): string {
  return lines([...entries].sort(byName).map((entry) => inOrder(entry, entrySchema)));
}

/** Text of patterns.json. Their order is their meaning: it is kept. */
export function formatPatterns(patterns: readonly object[]): string {
  return lines(patterns.map((pattern) => inOrder(pattern, patternSchema)));
}

/** Text of limits.json: thresholds first, then one ceiling a line, sorted by name. */
export function formatLimits({ limits, thresholds }: Limits): string {
  const rows = lines([...limits].sort(byName))
    .trimEnd()
    .replaceAll('\n', '\n  ');
  return `{\n  "thresholds": ${compact(thresholds)},\n  "limits": ${rows}\n}\n`;
}

/** Text of allergens.json: one family a block, its phrases sorted, each once. */
export function formatSourceWords(families: readonly object[]): string {
  const sorted = families.map((family) =>
    Object.fromEntries(
      Object.entries(inOrder(family, sourceWordsSchema)).map(([key, value]) => [
        key,
        Array.isArray(value) && key !== 'sources' ? [...new Set(value as string[])].sort() : value,
      ]),
    ),
  );
  const blocks = sorted.map((family) => {
    const rows = Object.entries(family).map(
      ([key, value]) => `    ${JSON.stringify(key)}: ${compact(value)}`,
    );
    return `  {\n${rows.join(',\n')}\n  }`;
  });
  return `[\n${blocks.join(',\n')}\n]\n`;
}

/** Text of kinds.json: lists of words sorted, each word once. */
export function formatKindWords(words: object): string {
  const sorted = (value: unknown): unknown => {
    if (Array.isArray(value))
      return value.every((each) => typeof each === 'string') ? [...new Set(value)].sort() : value.map(sorted);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, sorted(each)]));
  };
  const written = (value: unknown, indent: string): string => {
    if (Array.isArray(value) && value.some((each) => typeof each === 'object'))
      return `[\n${value.map((each) => `${indent}  ${compact(each)}`).join(',\n')}\n${indent}]`;
    if (Array.isArray(value)) return compact(value);
    const rows = Object.entries(value as object).map(
      ([key, each]) =>
        `${indent}  ${JSON.stringify(key)}: ${Array.isArray(each) ? written(each, `${indent}  `) : typeof each === 'object' ? written(each, `${indent}  `) : JSON.stringify(each)}`,
    );
    return `{\n${rows.join(',\n')}\n${indent}}`;
  };
  return `${written(sorted(words), '')}\n`;
}

/** Text of pattern-words.json: one list a line, its words sorted, each once. */
export function formatWords(words: Record<string, readonly string[]>): string {
  const rows = Object.entries(words).map(
    ([name, list]) => `  ${JSON.stringify(name)}: ${JSON.stringify([...new Set(list)].sort())}`,
  );
  return `{\n${rows.join(',\n')}\n}\n`;
}

/** Text of amounts/use-levels.json: one class, one shared sum, one kind a line. Their order is their meaning. */
export function formatUseLevels({ bases, classes, names, frames, kinds, ...rest }: UseLevels): string {
  const list = (values: readonly object[], indent: string) =>
    `[\n${values.map((value) => `${indent}  ${compact(value)}`).join(',\n')}\n${indent}]`;
  const record = (values: object) =>
    `{\n${Object.entries(values)
      .map(([key, value]) => `    ${JSON.stringify(key)}: ${compact(value)}`)
      .join(',\n')}\n  }`;
  const drawn = frames.map(({ id, shares }) => `    { "id": "${id}", "shares": ${list(shares, '    ')} }`);
  const fields = [
    `"bases": ${record(bases)}`,
    `"classes": ${list(classes, '  ')}`,
    `"names": ${record(Object.fromEntries(Object.entries(names).sort(([a], [b]) => byName({ name: a }, { name: b }))))}`,
    `"frames": [\n${drawn.join(',\n')}\n  ]`,
    `"kinds": ${record(kinds)}`,
    ...Object.entries(rest).map(([key, value]) => `${JSON.stringify(key)}: ${compact(value)}`),
  ];
  return `{\n${fields.map((field) => `  ${field}`).join(',\n')}\n}\n`;
}

/** Text of a file of words by which lists are found: lists of words in a line each, sorted, each word once. */
export function formatFinding(value: object): string {
  return `${pretty(value, '')}\n`;
}

function pretty(value: unknown, indent: string): string {
  if (Array.isArray(value) && value.every((each) => typeof each === 'string'))
    return `[${[...new Set(value)]
      .sort()
      .map((each) => JSON.stringify(each))
      .join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  const rows = Array.isArray(value)
    ? value.map((each) => pretty(each, inner))
    : Object.entries(value).map(([key, field]) => `${JSON.stringify(key)}: ${pretty(field, inner)}`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${rows.map((row) => inner + row).join(',\n')}\n${indent}${close}`;
}

/** Text of printed-often.json: one name a line, sorted, each once. */
export function formatNames(names: readonly string[]): string {
  return `${JSON.stringify([...new Set(names)].sort(), null, 2)}\n`;
}

/** Text of sources.json. The order in which they came is kept. */
export function formatSources(sources: object): string {
  return `${JSON.stringify(sources, null, 2)}\n`;
}

/** Capitals apart, by code unit: the same on every machine. */
const byName = (a: { name: string }, b: { name: string }) => {
  const [x, y] = [a.name.toLowerCase(), b.name.toLowerCase()];
  return x < y ? -1 : x > y ? 1 : 0;
};

const inOrder = (value: object, schema: z.ZodObject) => {
  const given = new Map(Object.entries(value));
  const known = Object.keys(schema.shape).filter((key) => given.has(key));
  const rest = [...given.keys()].filter((key) => !known.includes(key));
  return Object.fromEntries([...known, ...rest].map((key) => [key, given.get(key)]));
};

const lines = (values: readonly object[]) =>
  values.length ? `[\n${values.map((value) => `  ${compact(value)}`).join(',\n')}\n]\n` : '[]\n';

const compact = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(compact).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([key, field]) => `${JSON.stringify(key)}: ${compact(field)}`);
  return `{ ${fields.join(', ')} }`;
};
