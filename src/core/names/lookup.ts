import { createUseOf, type UseOf } from '../amounts/classes.ts';
import type { UseLevels } from '../amounts/use-levels.ts';
import { createRemarks, type Remarks } from '../label/no-names/remarks.ts';
import { createCandidates } from './candidates.ts';
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
import { besidePolymer, filedForms, nameForms, wholeForms } from './name-forms.ts';
import { createClose, type SpelledName } from './near/close-spellings.ts';
import { createMend } from './near/mend.ts';
import type { Words } from './near/near-words.ts';
import { keyOf, normalName } from './normal-form.ts';
import { once, onceEach } from './once-each.ts';
import { createSourceWords, type SourceFamilies } from './source-words.ts';
import { knownAs, type ToldKind } from './told-as.ts';

/** How a name was damaged, and so what was done to read it. */
export type Damage = 'cut' | 'run-together' | 'spelling' | 'leftovers';

/**
 * How a printed name was found. `mended` says what was printed and what was done: only where one reading is
 * possible, and refusable. `none` carries close spellings: offered to the user, never used.
 */
export type Found =
  | { how: 'exact' | 'alias' | 'pattern'; name: string }
  | { how: 'mended'; name: string; printed: string; damage: Damage }
  /** No dictionary knows it; the user said what it is. */
  | { how: 'told'; name: string; as: ToldKind }
  | { how: 'none'; close: string[] };

/** What is known of a found name. */
export type Known = {
  protein?: Protein;
  moisture: MoistureRole[];
  roles: Role[];
  allergens: Allergen[];
  functions: string[];
  sources: string[];
};

export type Law = { change: 'banned' | 'limited'; from: string };

export type Lookup = {
  /** Exact, alias or pattern, saying which; close spellings are not computed here. */
  find(raw: string): Found;
  /** The same of the text as it stands: no brackets left out, no pieces tried. */
  named(raw: string): Found;
  /** The entry that the text as it stands is filed under; no rule is tried. */
  filed(raw: string): Found;
  /** The one name that an unknown text surely is, its spelling or what stands beside it put right. */
  mend(raw: string): Found;
  /** Whether labels print this text often as a name that only a rule reads. */
  often(raw: string): boolean;
  /** The words of all names, in their normal form. */
  words(): Words;
  /** Properties of a name as `find` gave it (`found.name`), or of a pattern's match. */
  known(found: Found): Known;
  /** What EU law has changed for a found name since 2020: from when it is banned, or limited as it is now. */
  lawOf(found: Found): Law | undefined;
  /** The allergen families that a printed name, or the name it is known by, names as its source, or may be made from. */
  sourcesOf(printed: string, found: Found): SourceFamilies;
  /** Up to `most` close spellings of an unknown name, best first. Numbers must be equal; short tokens are exact only. */
  close(raw: string, most?: number): string[];
  /** The legal ceiling in percent of a found name for a use, if any. Unknown use takes the larger of the two. */
  ceiling(found: Found, use?: Use): number | undefined;
  thresholds: Thresholds;
  /** How a found name is used: its class, and figures of its own. */
  useOf(found: Found): UseOf;
  usual?: UseLevels;
  /** What stands among names and is none. */
  remarks: Remarks;
};

/** What every printed name is filed under: INCI names in their order, then aliases in theirs. */
export const keysOf = (entries: readonly Entry[]): string[] =>
  printedNames(entries).map(({ printed }) => keyOf(normalName(printed)));

const printedNames = (entries: readonly Entry[]) => [
  ...entries.map((entry) => ({ entry, printed: entry.name })),
  ...entries.flatMap((entry) => (entry.aliases ?? []).map((printed) => ({ entry, printed }))),
];

/**
 * Builds the lookup from the dictionary. Pure; entries, patterns and limits are plain data. `keys` may have been
 * worked out before (`keysOf`): that is nearly all the time it takes.
 */
export function createLookup(
  entries: readonly Entry[],
  patterns: readonly Pattern[],
  limits: Limits,
  keys: readonly string[] = keysOf(entries),
): Lookup {
  const filed = new Map<string, Filed>();
  // INCI names are filed before any alias: a name that is both is the INCI name.
  for (const [at, entry] of entries.entries()) filed.set(keys[at]!, { entry, how: 'exact' });
  let at = entries.length;
  for (const entry of entries)
    for (const _ of entry.aliases ?? []) {
      const key = keys[at++]!;
      if (!filed.has(key)) filed.set(key, { entry, how: 'alias' });
    }
  const rules = patterns.map((pattern) => ({ pattern, built: undefined as Built | undefined }));
  const mayTake = once(() => createCandidates(patterns));
  const takes = (rule: (typeof rules)[number], normal: string) => {
    rule.built ??= built(rule.pattern);
    return rule.built.match.test(normal) && !rule.built.not?.test(normal);
  };
  const ruled = new Map<string, Pattern | undefined>();
  const ruleOf = (normal: string) => {
    if (normal.length > longestPattern) return undefined;
    if (ruled.has(normal)) return ruled.get(normal);
    const first = mayTake()(normal).find((rule) => takes(rules[rule]!, normal));
    if (ruled.size >= mostRemembered) ruled.clear();
    const rule = first === undefined ? undefined : patterns[first];
    ruled.set(normal, rule);
    return rule;
  };
  const caps = once(() => new Map(limits.limits.map((limit) => [keyOf(normalName(limit.name)), limit])));
  const capOf = (found: Found) =>
    found.how === 'none' ? undefined : caps().get(keyOf(normalName(found.name)));
  /** What a damaged name is held against, in normal form, each with the INCI name it leads to. */
  const names = once((): SpelledName[] =>
    [
      ...printedNames(entries).map(({ entry, printed }) => ({ printed, name: entry.name })),
      ...(limits.printedOften ?? []).map((name) => ({ printed: name, name })),
    ].map(({ printed, name }) => ({ normal: normalName(printed), name, isInci: printed === name })),
  );
  const often = once(() => new Set(limits.printedOften?.map((name) => keyOf(normalName(name)))));
  const close = createClose(names);
  const mend = createMend(names, patterns, (normal) => named(normal, normal));
  const sources = createSourceWords(limits.sourceWords ?? []);
  const met = onceEach<WithFact>(mostRemembered);

  const meet = (raw: string): WithFact => (raw.length > longestName ? unmet : met(raw, () => search(raw)));
  const search = (raw: string): WithFact => {
    const direct = byKey(keyOf(normalName(raw)));
    if (direct) return direct;
    for (const form of filedForms(raw)) {
      const entry = byKey(keyOf(normalName(form)));
      if (entry) return entry;
    }
    for (const form of nameForms(raw)) {
      const answer = named(normalName(form), form);
      if (answer) return answer;
    }
    const pair = besidePolymer(raw);
    const other = pair && meet(pair[1]);
    return other?.fact ? (meet(pair![0]).fact ? meet(pair![0]) : other) : unmet;
  };
  const named = (normal: string, printed: string): WithFact | undefined => {
    const entry = byKey(keyOf(normal));
    if (entry) return entry;
    const rule = ruleOf(normal);
    return rule && { found: { how: 'pattern', name: withoutRemarks(printed) }, fact: rule };
  };
  const byKey = (key: string): WithFact | undefined => {
    const hit = filed.get(key);
    return hit && { found: { how: hit.how, name: hit.entry.name }, fact: hit.entry };
  };

  const useOf = createUseOf(limits.usual ?? { classes: [], names: {} });
  const known = (found: Found): Known => {
    if (found.how === 'told') return knownAs(found.as);
    if (found.how === 'none') return unknown;
    const { fact } = meet(found.name);
    return {
      ...(fact?.protein ? { protein: fact.protein } : {}),
      moisture: fact?.moisture ?? [],
      roles: fact?.roles ?? [],
      allergens: [...new Set([...(fact?.allergens ?? []), ...sources(found.name).says])],
      functions: (fact && 'functions' in fact && fact.functions) || [],
      sources: fact?.sources ?? [],
    };
  };

  const remarks = once(() => createRemarks(limits.labelWords));
  return {
    thresholds: limits.thresholds,
    get remarks() {
      return remarks();
    },
    ...(limits.usual && { usual: limits.usual }),
    find: (raw) => meet(raw).found,
    named: (raw) => ((raw.length > longestName ? undefined : named(normalName(raw), raw)) ?? unmet).found,
    filed: (raw) => ((raw.length > longestName ? undefined : byKey(keyOf(normalName(raw)))) ?? unmet).found,
    mend: (raw) => (raw.length > longestName ? unmet.found : mend.name(raw)),
    often: (raw) => often().has(keyOf(normalName(raw))),
    words: mend.words,
    known,
    useOf: (found) => useOf(found, known(found)),
    lawOf(found) {
      const cap = capOf(found);
      if (cap?.banned) return { change: 'banned', from: cap.banned };
      return cap?.since ? { change: 'limited', from: cap.since } : undefined;
    },
    sourcesOf(printed, found) {
      const told = sources(printed);
      // Only another name for the same can say more than what is printed.
      const other = found.how === 'alias' || found.how === 'mended' ? sources(found.name) : undefined;
      if (!other) return told;
      const says = [...new Set([...told.says, ...other.says])].filter((family) => !told.not.includes(family));
      const mayBe = told.says.length > 0 ? told.mayBe : [...told.mayBe, ...other.mayBe];
      const open = [...new Set(mayBe)].filter((family) => ![...says, ...told.not].includes(family));
      return { ...told, says, mayBe: open };
    },
    close: (raw, most = 3) =>
      raw.length > longestName ? [] : close(normalName(wholeForms(raw).at(-1) ?? raw), most),
    ceiling(found, use) {
      const cap = capOf(found);
      if (!cap) return undefined;
      if (use === 'rinse-off') return cap.rinseOff;
      if (use === 'leave-on') return cap.leaveOn;
      return cap.rinseOff === undefined || cap.leaveOn === undefined
        ? undefined
        : Math.max(cap.rinseOff, cap.leaveOn);
    },
  };
}

/** A remark in square or curly brackets is no part of the name. */
const withoutRemarks = (printed: string) =>
  printed.includes('[') || printed.includes('{')
    ? printed.replace(/\s*(?:\[[^[\]]*\]|\{[^{}]*\})/g, '').trim() || printed
    : printed;

type Built = { match: RegExp; not: RegExp | undefined };

const built = ({ match, not }: Pattern): Built => ({
  match: new RegExp(match, 'u'),
  not: not === undefined ? undefined : new RegExp(not, 'u'),
});

const unknown: Known = { moisture: [], roles: [], allergens: [], functions: [], sources: [] };
const unmet: WithFact = { found: { how: 'none', close: [] }, fact: undefined };

type Filed = { entry: Entry; how: 'exact' | 'alias' };
export type WithFact = { found: Found; fact: Entry | Pattern | undefined };

const mostRemembered = 5000; // answers kept by one lookup
const longestName = 800; // letters: nothing longer is a name
const longestPattern = 300; // letters: no pattern is tried on longer text
