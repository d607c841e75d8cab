import type { Lookup } from '../../core/names/lookup.ts';
import { onceEach } from '../../core/names/once-each.ts';
import type { FindingFacts } from '../facts.ts';
import { unseen } from '../text/letters.ts';
import { wordTest } from './words.ts';

/**
 * What a name speaks for. `own`: known, and printed by cosmetics only. `plant`: a known Latin plant name. `shared`:
 * known, and printed by other goods too; `water` is, and lists begin with it. `built`: unknown, but built like a name. `foreign`: printed by other goods
 * only. `other`: nothing is known of it.
 */
export type NameKind = 'own' | 'plant' | 'shared' | 'water' | 'built' | 'foreign' | 'other';

const mostRemembered = 5000; // names whose kind is kept
const longestKnown = 160; // letters: anything longer is no name
const fewestLatin = 3; // words of an INCI name of a plant: genus, species, what is taken of it
const mostPlainWords = 5; // words of a plain-English name: more is talk about it

const keyOf = (name: string) =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Tells names apart by the dictionary and the facts beside it; `waters` are INCI names of water. */
export function createKinds(
  lookup: Pick<Lookup, 'find'>,
  facts: FindingFacts,
  waters: ReadonlySet<string>,
): (name: string) => NameKind {
  const shared = new Set(facts.shared.groups.flatMap(({ names }) => names.map(keyOf)));
  const forms = new Set(facts.shared.forms.words);
  const pressed = new Set(facts.shared.pressed.words);
  const genera = new Set(facts.genera);
  const plain = wordTest(facts.own.plain.words);
  const latin = wordTest(facts.own.latin.words);
  const built = wordTest([...facts.own.built.words, ...facts.own.frequent.words]);
  const otherGoods = facts.goods.goods.flatMap((good) => good.words);
  const foreign = wordTest(otherGoods);
  const foreignWhole = new Set(otherGoods.map(keyOf));
  const isPlant = (inci: string) => inci.split(' ').some((word) => genera.has(word));
  const remembered = onceEach<NameKind>(mostRemembered);

  const judged = (printed: string): NameKind => {
    const name = printed
      .replace(unseen, '')
      .replace(/^[\s#*†‡°•]*(?:[a-z]{0,3}\d{4,}[\w/]*\s+[-–:]?\s*(?=\p{L}{3}))?/u, '')
      .replace(/\(?[<>~≤≥]?\s?\d[\d.,]*\s?(?:%|ppm|ppb)\)?/gu, ' ')
      .trim();
    if (name.length > longestKnown || !/\p{L}/u.test(name)) return 'other';
    const key = keyOf(name);
    if (foreignWhole.has(key) || measured.test(name)) return 'foreign';
    const found = lookup.find(name);
    const words = key.split(' ');
    const few = words.length <= mostPlainWords;
    if (found.how === 'none') {
      if (few && plain.test(name)) return 'own';
      if (foreign.test(name)) return 'foreign';
      return built.test(name) || (few && pressed.has(words.at(-1)!)) ? 'built' : 'other';
    }
    if (waters.has(found.name)) return 'water';
    const inci = keyOf(found.name);
    const plainly = few && (plain.test(name) || latin.test(inci));
    if (shared.has(key) || shared.has(key.replace(/ \d+$/, ''))) return plainly ? 'own' : 'shared';
    if (words.some((word) => genera.has(word))) return 'plant';
    if (plainly) return 'own';
    if (shared.has(inci)) return 'shared';
    if (foreign.test(words.at(-1)!)) return 'foreign';
    if (built.test(name)) return 'own';
    // The everyday name of a plant, or of a part of one, stands on food as often.
    if (forms.has(words.at(-1)!) || forms.has(inci.split(' ').at(-1)!))
      return found.how === 'exact' && words.length >= fewestLatin ? 'plant' : 'shared';
    return found.how !== 'exact' && isPlant(inci) ? 'shared' : 'own';
  };

  return (name) => remembered(name, () => judged(name));
}

/** "60 g Cetyl Alcohol", "2 cups …": what a recipe weighs out. */
const measured = /^(?:\d[\d.,/]*|[½¼¾])\s?(?:g|kg|ml|oz|l|lb|dl|cl)\.?\s+\p{L}/u;

export const isKnownKind = (kind: NameKind) =>
  kind === 'own' || kind === 'plant' || kind === 'shared' || kind === 'water';
export const isNameKind = (kind: NameKind) => isKnownKind(kind) || kind === 'built';
