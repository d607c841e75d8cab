import type { LabelPart } from '../label/split-label.ts';
import type { Found, Lookup } from '../names/lookup.ts';
import { normalName } from '../names/normal-form.ts';
import type { ToldAs } from '../names/told-as.ts';
import { joinedCuts } from './cut-names.ts';
import { withoutLeftovers, withoutTail } from './leftovers.ts';
import { listedNames } from './lost-commas.ts';
import { partedNames } from './run-together.ts';
import { secondLook } from './second-look.ts';
import { namedWhole } from './tokens.ts';

export type Spoken = { part: LabelPart; found: Found };

/** How a user had a name read: printed name → dictionary name, or what it is; empty: as printed, never mended. */
export type ReadAs = Record<string, string | ToldAs>;

/**
 * What each part of a label is. What no name is found for is mended where one reading is possible; what holds
 * only praise, cautions or kinds of product is left out.
 */
export function findParts(text: string, parts: LabelPart[], lookup: Lookup, readAs: ReadAs): Spoken[] {
  const refused = (printed: string) => chosen(readAs, printed) === '';
  const spoken = parts.map((part) => ({ part, found: findPart(part, lookup, readAs) }));
  const unread = spoken.filter(({ found }) => found.how === 'none').length;
  const mended =
    unread > mostMended
      ? spoken
      : joinedCuts(text, spoken, lookup, refused).flatMap((each) => mendedPart(each, lookup, refused));
  const isOfNames = (word: string) => lookup.words().has(normalName(word));
  const amongNames = mended.filter(({ found }) => found.how !== 'none').length >= fewestNames;
  const end = mended.at(-1);
  if (amongNames && end?.found.how === 'none' && !refused(end.part.raw)) {
    const before = withoutTail(end.part.raw, lookup);
    if (before) mended[mended.length - 1] = { part: end.part, found: before };
  }
  const last = mended.findLastIndex(({ found }) => found.how !== 'none');
  const spokenFor = amongNames ? mended.map((each) => barePlant(each, lookup)) : mended;
  return spokenFor.filter(({ part, found }, i) => {
    if (found.how !== 'none') return true;
    if (lookup.remarks.isNoName(part.raw)) return false;
    const ends = i > last || sentenceBefore.test(text.slice(Math.max(0, part.from - 12), part.from));
    return !(ends && lookup.remarks.isAside(part.raw, isOfNames));
  });
}

const mostMended = 80; // unknown parts of one label that are looked at more closely: more is no list
const fewestNames = 4; // found names that make a text a list

/** "Rosemary" in a list is the plant, though the word alone says nothing: its extract would be a name. */
function barePlant(each: Spoken, lookup: Lookup): Spoken {
  const name = each.part.names[0];
  if (each.found.how !== 'none' || !name || !/^\p{L}+(?: \p{L}+)?$/u.test(name)) return each;
  const extract = lookup.named(`${name} extract`);
  if (extract.how === 'none' || lookup.known(extract).protein || lookup.remarks.isNoName(name)) return each;
  return { ...each, found: { how: 'pattern', name } };
}

const sentenceBefore = /(?:[.!?]|\n)[\s*†‡°•◊●Δ¹²³()-]*$/u;

const chosen = (readAs: ReadAs, printed: string) =>
  Object.hasOwn(readAs, printed) ? readAs[printed] : undefined;

function findPart(part: LabelPart, lookup: Lookup, readAs: ReadAs): Found {
  for (const name of part.names) {
    const found = lookup.find(name);
    if (found.how !== 'none') return found;
  }
  const said = chosen(readAs, part.names[0] ?? part.raw) || chosen(readAs, part.raw);
  if (!said) return { how: 'none', close: [] };
  return typeof said === 'string'
    ? { how: 'alias', name: said }
    : { how: 'told', name: part.raw, as: said.as };
}

const afterBracket = /[)\]}]\s+\p{L}/u;

function mendedPart(each: Spoken, lookup: Lookup, refused: (printed: string) => boolean): Spoken[] {
  const { part, found } = each;
  if (found.how === 'mended' || refused(part.raw) || refused(part.names[0] ?? part.raw)) return [each];
  const list = listedNames(each, lookup);
  if (list) return list;
  if (found.how !== 'none') {
    // Found by what stands before its bracket: the comma after the bracket may be missing.
    const pieced = afterBracket.test(part.raw) && namedWhole(part.raw, lookup).how === 'none';
    return (pieced && partedNames(part, lookup)) || secondLook(each, lookup) || [each];
  }
  const bare = withoutLeftovers(part.raw, lookup);
  if (bare) return [{ part, found: bare }];
  const several = partedNames(part, lookup);
  if (several) return several;
  const respelled = lookup.mend(part.names[0] ?? part.raw);
  return respelled.how === 'mended' ? [{ part, found: { ...respelled, printed: part.raw } }] : [each];
}
