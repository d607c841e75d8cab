import type { Found, Lookup } from '../names/lookup.ts';
import { distance } from '../names/near/near-words.ts';
import type { Spoken } from './find-parts.ts';
import { withoutLeftovers, withoutRemarks } from './leftovers.ts';
import { partedNames } from './run-together.ts';
import { namedWhole, plainWords, stands } from './tokens.ts';

const sameLetters = 3; // at the beginning of each word
const dash = /\s+[-–—=]\s+|:\s+/;
const moreAfterBracket = /[)\]}]\s+\p{L}/u;

/**
 * What was found too easily: by a piece of the text, or by a rule of the grammar that takes any words before its
 * own. Read as what it is, and said to be mended; undefined where the first look was right.
 */
export function secondLook(each: Spoken, lookup: Lookup): Spoken[] | undefined {
  const { part } = each;
  const whole = namedWhole(part.raw, lookup);
  if (whole.how === 'exact' || whole.how === 'alias') return undefined;
  const beside = besideDash(each, lookup);
  if (beside) return beside;
  if (whole.how === 'pattern')
    return grownApart(each, lookup) ?? partedAlike(each, lookup) ?? respelled(each, lookup);
  if (!moreAfterBracket.test(part.raw)) {
    // "Rosa Canina Flower/Leaf Extract 2 g": a piece of it was found before the remark was left out.
    const bare = part.raw.includes('/') ? withoutLeftovers(part.raw, lookup) : undefined;
    return bare?.how === 'mended' && each.found.how !== 'none' && bare.name !== each.found.name
      ? [{ part, found: bare }]
      : undefined;
  }
  // Found by what stands before its bracket, or in it.
  const bare = withoutLeftovers(part.raw, lookup);
  return (bare && [{ part, found: bare }]) ?? partedNames(part, lookup) ?? respelled(each, lookup);
}

/** Names run together, unless what is taken for a protein would become another kind of one. */
function partedAlike({ part, found }: Spoken, lookup: Lookup): Spoken[] | undefined {
  const parted = partedNames(part, lookup, true);
  const { protein } = lookup.known(found);
  if (!parted || !protein) return parted;
  const kinds = parted.flatMap((one) => lookup.known(one.found).protein?.kind ?? []);
  return kinds.length > 0 && kinds.every((kind) => kind === protein.kind) ? parted : undefined;
}

/** "Citric Acid - Urea" are two names; of "Glycerin - emollient" and "Hair Mask - Aqua" one piece is the name. */
function besideDash({ part, found }: Spoken, lookup: Lookup): Spoken[] | undefined {
  const { raw: printed } = part;
  const pieces = printed.split(dash);
  if (pieces.length !== 2 || found.how === 'none' || /[([{][^)\]}]*$/.test(pieces[0]!)) return undefined;
  const [first, second] = pieces.map((raw) =>
    namedWhole(raw, lookup).how === 'none' ? undefined : lookup.find(raw),
  );
  if (!first || !second) {
    const only = first ?? second;
    return only && [{ part, found: mended(only, printed, 'leftovers') }];
  }
  if (first.how !== 'none' && second.how !== 'none' && first.name === second.name) return undefined; // in two languages
  return [first, second].map((one, i) => {
    const raw = pieces[i]!;
    const from = part.from + (i === 0 ? 0 : printed.length - raw.length);
    const own = { ...part, raw, from, to: from + raw.length, names: [raw] };
    return { part: own, found: mended(one, printed, 'run-together') };
  });
}

const mended = (found: Found, printed: string, damage: 'run-together' | 'leftovers'): Found =>
  found.how === 'none' ? found : { how: 'mended', name: found.name, printed, damage };

/** "Organic Rosehip Seed Oil": how it was grown is no part of the name, unless the two stand together in one. */
function grownApart({ part }: Spoken, lookup: Lookup): Spoken[] | undefined {
  const words = plainWords(part.raw);
  const at = words.findIndex((word) => !lookup.remarks.isGrown(word));
  const bare = withoutRemarks(part.raw, lookup, lookup.remarks.isGrownOrMuch);
  if (!bare || bare.how === 'none') return undefined;
  if (
    at > 0 &&
    lookup.words().beside(words[at - 1]!, words[at]!) &&
    lookup.named(bare.name).how === 'pattern'
  )
    return undefined;
  return [{ part, found: bare }];
}

/** A rule takes any species: where a word is none of the dictionary's and a letter or two make a name of it, it is that. */
function respelled(each: Spoken, lookup: Lookup): Spoken[] | undefined {
  const { part } = each;
  const name = part.names[0] ?? part.raw;
  if (plainWords(name).every((word) => lookup.words().has(word))) return undefined;
  const found = lookup.mend(name);
  if (found.how !== 'mended') return undefined;
  if (lookup.named(found.name).how === 'pattern' && !stands(found.name, lookup)) return undefined;
  // Of what a rule takes, sesamidopropyl is not soyamidopropyl: a word keeps its beginning, or all but a letter.
  if (beginningsOf(found.name) !== beginningsOf(name) && !isALetterOff(found.name, name)) return undefined;
  const kinds = [found, each.found].map((one) => lookup.known(one).protein?.kind);
  return kinds[0] === kinds[1] ? [{ part, found: { ...found, printed: part.raw } }] : undefined;
}

/** Whether each word begins with the same letter and is at most one letter off. */
function isALetterOff(one: string, other: string): boolean {
  const [a, b] = [plainWords(one), plainWords(other)];
  return a.length === b.length && a.every((word, i) => word[0] === b[i]![0] && distance(word, b[i]!, 1) <= 1);
}

/** The first letters of each word, with one letter for those that readers of pictures take for one another. */
const beginningsOf = (text: string) =>
  plainWords(text)
    .map((word) =>
      word
        .replace(/^fen/, 'phen')
        .replace(/rn/g, 'm')
        .replace(/vv/g, 'w')
        .replace(/ii/g, 'u')
        .replace(/[l1]/g, 'i')
        .replace(/0/g, 'o')
        .slice(0, sameLetters),
    )
    .join(' ');
