// What is wrong with the dictionary, in sentences that name the entry: sources, clashes, kinds.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expand } from '../../dictionary/expand.ts';
import type { Entry, Limits, Pattern } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { keyOf, normalName } from '../../src/core/names/normal-form.ts';
import { root } from './steps.ts';

export type Dictionary = {
  families: Record<string, Entry[]>;
  patterns: Pattern[];
  limits: Limits;
  /** Names that rules read and labels print often. */
  printedOften: string[];
  /** Keys of sources.json. */
  sources: string[];
  /** Every other text in which a source may be named (allowance.json and the like). */
  elsewhere: string[];
};

const read = (path: string) => readFileSync(join(root, 'dictionary', path), 'utf8');

/** The dictionary as it lies on disk. */
export function readDictionary(): Dictionary {
  const json = (folder: string) =>
    readdirSync(join(root, 'dictionary', folder)).filter((file) => file.endsWith('.json'));
  const families = json('entries').map((file) => [
    file.replace('.json', ''),
    JSON.parse(read(`entries/${file}`)),
  ]);
  const own = ['patterns.json', 'pattern-words.json', 'limits.json', 'sources.json'];
  return {
    families: Object.fromEntries(families),
    patterns: expand(JSON.parse(read('patterns.json')), JSON.parse(read('pattern-words.json'))),
    limits: JSON.parse(read('limits.json')),
    printedOften: JSON.parse(read('printed-often.json')),
    sources: Object.keys(JSON.parse(read('sources.json'))),
    elsewhere: [
      ...json('.').filter((file) => !own.includes(file)),
      ...json('amounts').map((file) => `amounts/${file}`),
      ...json('finding').map((file) => `finding/${file}`),
    ].map(read),
  };
}

/** Every problem, one sentence each; empty when all is well. */
export function problemsOf(dictionary: Dictionary): string[] {
  return [
    ...sourceProblems(dictionary),
    ...clashes(dictionary),
    ...misplaced(dictionary),
    ...unruled(dictionary),
  ];
}

function sourceProblems({ families, patterns, limits, sources, elsewhere }: Dictionary): string[] {
  const used = new Map<string, string>();
  const use = (by: string, keys: string[]) => {
    for (const key of keys) used.set(key, by);
  };
  for (const each of [...Object.values(families).flat(), ...patterns]) {
    const by = 'name' in each ? each.name : each.id;
    use(by, each.sources);
    use(by, each.protein?.sources ?? []);
  }
  for (const limit of limits.limits) use(`limit of ${limit.name}`, limit.sources);
  for (const [name, key] of Object.entries(limits.thresholds.sources ?? {})) use(`threshold ${name}`, [key]);
  const named = (key: string) => used.has(key) || elsewhere.some((text) => text.includes(`"${key}"`));
  return [
    ...[...used]
      .filter(([key]) => !sources.includes(key))
      .map(([key, by]) => `“${by}” names the source “${key}”, which is not in sources.json.`),
    ...sources.filter((key) => !named(key)).map((key) => `The source “${key}” is used by nothing.`),
  ];
}

/** One normal form, one entry: an alias is neither its own entry's name again, nor another's name or alias. */
function clashes({ families }: Dictionary): string[] {
  const entries = Object.values(families).flat();
  const byKey = new Map<string, { entry: Entry; is: 'name' | 'alias' }>();
  const problems: string[] = [];
  for (const entry of entries) {
    const key = keyOf(normalName(entry.name));
    if (byKey.has(key)) problems.push(`“${entry.name}” has the same normal form as another entry’s name.`);
    byKey.set(key, { entry, is: 'name' });
  }
  for (const entry of entries)
    for (const alias of entry.aliases ?? []) {
      const key = keyOf(normalName(alias));
      const met = byKey.get(key);
      if (!met) byKey.set(key, { entry, is: 'alias' });
      else if (met.entry !== entry)
        problems.push(`“${alias}” is an alias of “${entry.name}” and also leads to “${met.entry.name}”.`);
      else
        problems.push(
          `“${alias}” repeats ${met.is === 'name' ? 'the name' : 'another alias'} of “${entry.name}”: leave it out.`,
        );
    }
  return problems;
}

/** Names that a protein pattern reads belong to the pattern or to a proteins file: elsewhere they would hide it. */
function misplaced({ families, patterns, limits }: Dictionary): string[] {
  const rules = createLookup([], patterns, limits);
  return Object.entries(families)
    .filter(([family]) => !family.startsWith('proteins'))
    .flatMap(([family, entries]) =>
      entries
        .filter(({ name, protein }) => protein || rules.known(rules.find(name)).protein)
        .map(({ name }) => `“${name}” is protein matter: it belongs in a proteins file, not in ${family}.`),
    );
}

/** A name that is printed often is there because a rule reads it: one that an entry has is told there. */
function unruled({ families, patterns, limits, printedOften }: Dictionary): string[] {
  const lookup = createLookup(Object.values(families).flat(), patterns, limits);
  return printedOften
    .filter((name) => lookup.named(name).how !== 'pattern')
    .map((name) => `“${name}” is printed often, and no rule reads it: an entry has it, or nothing does.`);
}
