import { createCandidates } from './candidates.ts';
import type { Allergen, SourceWords } from './entry.ts';
import { normalName } from './normal-form.ts';
import { once, onceEach } from './once-each.ts';
import { phraseFinder, stretchOf } from './phrases.ts';

/** Families that a printed name names outright, and those it may hold because it does not say its source. */
export type SourceFamilies = {
  says: Allergen[];
  mayBe: Allergen[];
  /** Families of which it only looks alike, whatever a shorter name for it would say. */
  not: Allergen[];
};

/**
 * Asks a printed name what it was made from, whatever entry or rule takes the name: "Hydroxypropyltrimonium
 * Hydrolyzed Corn/Wheat Protein" is wheat, "Buckwheat" is not, "Vegetable Protein" may be.
 */
export function createSourceWords(families: readonly SourceWords[]): (printed: string) => SourceFamilies {
  const asked = families.map((family) => once(() => ask(family)));
  // No expression is built for a family none of whose words can be in the name.
  const mayAsk = once(() =>
    createCandidates(
      families.map(({ says, mayBe = [], silences }) => ({
        needs: [...says, ...mayBe, ...(silences?.words ?? [])].map((phrase) => stretchOf(phrase, spaced)),
      })),
    ),
  );
  const met = onceEach<SourceFamilies>(mostRemembered);
  return (printed) =>
    met(printed, () => {
      if (printed.length > longestName) return nothing;
      const text = spaced(printed);
      return sourcesIn(
        text,
        mayAsk()(text).map((family) => asked[family]!()),
      );
    });
}

type Asked = {
  family: Allergen;
  says: RegExp;
  mayBe: RegExp | undefined;
  not: RegExp | undefined;
  softens: RegExp | undefined;
  silences: { words: RegExp; unless: RegExp } | undefined;
};

const nothing: SourceFamilies = { says: [], mayBe: [], not: [] };

function sourcesIn(text: string, asked: readonly Asked[]): SourceFamilies {
  const says: Allergen[] = [];
  const softened: Allergen[] = [];
  const unnamed: Allergen[] = [];
  const not: Allergen[] = [];
  const scent = asked.find(
    ({ silences }) =>
      silences && !silences.unless.test(text.replace(silences.words, ' ·')) && silences.words.test(text),
  );
  for (const { family, ...rule } of scent ? [scent] : asked) {
    if (!rule.says.test(text) && !rule.mayBe?.test(text)) continue;
    const left = rule.not ? text.replace(rule.not, ' ·') : text;
    if (rule.says.test(left)) (rule.softens?.test(left) ? softened : says).push(family);
    else if (rule.mayBe?.test(left) && !rule.softens?.test(left)) unnamed.push(family);
    else not.push(family);
  }
  // A name that says its source leaves no other open: "Lecithin (Egg)".
  const mayBe = says.length > 0 ? softened : [...softened, ...unnamed];
  return { says, mayBe, not };
}

/** Words apart by one space, with one at each end: a phrase is found at the edges of words, and not across a slash. */
const spaced = (printed: string) =>
  ` ${normalName(printed)
    .replace(/\//g, ' / ')
    .replace(/[^\p{L}\p{N}/]+/gu, ' ')
    .trim()} `;

const ask = ({ family, says, mayBe, not, softens, silences }: SourceWords): Asked => ({
  family,
  says: oneOf(says),
  mayBe: mayBe && oneOf(mayBe),
  not: not && oneOf(not, 'g'),
  softens: softens && oneOf(softens),
  silences: silences && { words: oneOf(silences.words), unless: oneOf(silences.unless) },
});

const oneOf = (phrases: readonly string[], flags = '') => phraseFinder(phrases, spaced, flags);

const mostRemembered = 5000; // answers kept by one lookup
const longestName = 2000; // letters: longer text is no name
