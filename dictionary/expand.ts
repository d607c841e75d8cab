import type { Pattern } from '../src/core/names/entry.ts';

/** Writes the word lists of pattern-words.json out where a pattern names one: `<acid>` → `(?:acetate|…)`. */
export function expand(patterns: readonly Pattern[], words: Record<string, string[]>): Pattern[] {
  const written = new Map(Object.entries(words).map(([name, list]) => [name, `(?:${list.join('|')})`]));
  const write = (source: string) =>
    source.replace(/<([a-z]+)>/g, (all, name: string) => {
      const list = written.get(name);
      if (!list) throw new Error(`pattern-words.json has no list for ${all}`);
      return list;
    });
  return patterns.map((pattern) => ({
    ...pattern,
    match: write(pattern.match),
    ...(pattern.not === undefined ? {} : { not: write(pattern.not) }),
  }));
}
