import type {
  Allergen,
  Entry,
  Limits,
  MoistureRole,
  Pattern,
  Protein,
  Role,
  Thresholds,
  Use,
} from './entry.ts';

/** How a printed name was found. `none` carries close spellings: offered to the reader, never used. */
export type Found = { how: 'exact' | 'alias' | 'pattern'; name: string } | { how: 'none'; close: string[] };

/** What is known of a found name. */
export type Known = {
  protein?: Protein;
  moisture: MoistureRole[];
  roles: Role[];
  allergens: Allergen[];
  functions: string[];
  sources: string[];
};

export type Lookup = {
  /** Exact, alias or pattern, saying which; close spellings are not computed here. */
  find(raw: string): Found;
  /** Properties of a name as `find` gave it (`found.name`), or of a pattern's match. */
  known(found: Found): Known;
  /** Up to `most` close spellings of an unknown name, best first. Numbers must be equal; short tokens are exact only. */
  close(raw: string, most?: number): string[];
  /** The legal ceiling in percent of a found name for a use, if any. Unknown use takes the larger of the two. */
  ceiling(found: Found, use?: Use): number | undefined;
  thresholds: Thresholds;
};

/** Builds the lookup from the dictionary. Pure; entries, patterns and limits are plain data. */
export function createLookup(
  entries: readonly Entry[],
  patterns: readonly Pattern[],
  limits: Limits,
): Lookup {
  const byName = new Map<string, Entry>();
  const byAlias = new Map<string, Entry>();
  for (const entry of entries) byName.set(normal(entry.name), entry);
  for (const entry of entries)
    for (const alias of entry.aliases ?? [])
      if (!byName.has(normal(alias))) byAlias.set(normal(alias), entry);
  const rules = patterns.map((pattern) => ({
    pattern,
    match: new RegExp(pattern.match, 'u'),
    not: pattern.not ? new RegExp(pattern.not, 'u') : undefined,
  }));
  const caps = new Map(limits.limits.map((limit) => [normal(limit.name), limit]));
  const ruleOf = (name: string) =>
    rules.find(({ match, not }) => match.test(name) && !not?.test(name))?.pattern;
  return {
    thresholds: limits.thresholds,
    find(raw) {
      const name = normal(raw);
      const exact = byName.get(name);
      if (exact) return { how: 'exact', name: exact.name };
      const alias = byAlias.get(name);
      if (alias) return { how: 'alias', name: alias.name };
      return ruleOf(name) ? { how: 'pattern', name: raw.trim() } : { how: 'none', close: [] };
    },
    known(found) {
      const fact =
        found.how === 'none' ? undefined : (byName.get(normal(found.name)) ?? ruleOf(normal(found.name)));
      return {
        ...(fact?.protein ? { protein: fact.protein } : {}),
        moisture: fact?.moisture ?? [],
        roles: fact?.roles ?? [],
        allergens: fact?.allergens ?? [],
        functions: (fact && 'functions' in fact && fact.functions) || [],
        sources: fact?.sources ?? [],
      };
    },
    close: () => [],
    ceiling(found, use) {
      const cap = found.how === 'none' ? undefined : caps.get(normal(found.name));
      if (!cap) return undefined;
      if (use === 'rinse-off') return cap.rinseOff;
      if (use === 'leave-on') return cap.leaveOn;
      return cap.rinseOff === undefined || cap.leaveOn === undefined
        ? undefined
        : Math.max(cap.rinseOff, cap.leaveOn);
    },
  };
}

const normal = (name: string) => name.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();
