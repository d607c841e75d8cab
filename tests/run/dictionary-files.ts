// The dictionary's files on disk: read, and written in their one layout.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  formatEntries,
  formatFinding,
  formatKindWords,
  formatLimits,
  formatNames,
  formatPatterns,
  formatSources,
  formatSourceWords,
  formatUseLevels,
  formatWords,
} from '../../dictionary/format.ts';
import { root } from './steps.ts';

const folder = join(root, 'dictionary');

export type DataFile = { path: string; text: string; formatted: string };

/** Every entries file, patterns, word lists, limits and sources, with the text each should have. Throws on broken JSON, naming the file. */
export function dictionaryFiles(): DataFile[] {
  const inside = (room: string) =>
    readdirSync(join(folder, room))
      .filter((file) => file.endsWith('.json'))
      .sort()
      .map((file) => join(room, file));
  return [
    ...inside('entries').map((path) => [path, formatEntries] as const),
    ...inside('finding').map((path) => [path, formatFinding] as const),
    ['patterns.json', formatPatterns] as const,
    ['pattern-words.json', formatWords] as const,
    ['printed-often.json', formatNames] as const,
    ['limits.json', formatLimits] as const,
    ['allergens.json', formatSourceWords] as const,
    ['kinds.json', formatKindWords] as const,
    ['amounts/use-levels.json', formatUseLevels] as const,
    ['sources.json', formatSources] as const,
  ].map(([path, format]) => {
    const text = readFileSync(join(folder, path), 'utf8');
    try {
      return { path, text, formatted: format(JSON.parse(text)) };
    } catch (cause) {
      throw new Error(`dictionary/${path} is not valid JSON: ${(cause as Error).message}`, { cause });
    }
  });
}

/** Writes the files whose text is not in the one layout; returns their paths. */
export function rewriteDictionary(): string[] {
  const changed = dictionaryFiles().filter(({ text, formatted }) => text !== formatted);
  for (const { path, formatted } of changed) writeFileSync(join(folder, path), formatted);
  return changed.map(({ path }) => path);
}
