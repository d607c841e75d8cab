import { isNoName } from '../label/no-names.ts';
import type { LabelPart } from '../label/split-label.ts';
import type { Found, Lookup } from '../names/lookup.ts';
import type { ToldAs } from '../names/told-as.ts';
import { joinedCuts } from './cut-names.ts';
import { withoutLeftovers } from './leftovers.ts';
import { partedNames } from './run-together.ts';

export type Spoken = { part: LabelPart; found: Found };

/** How a reader had a name read: printed name → dictionary name, or what it is; empty: as printed, never mended. */
export type ReadAs = Record<string, string | ToldAs>;

/**
 * What each part of a label is. What no name is found for is mended where one reading is possible; what holds
 * only praise, cautions or kinds of product is left out.
 */
export function findParts(text: string, parts: LabelPart[], lookup: Lookup, readAs: ReadAs): Spoken[] {
  const refused = (printed: string) => chosen(readAs, printed) === '';
  const spoken = parts.map((part) => ({ part, found: findPart(part, lookup, readAs) }));
  return joinedCuts(text, spoken, lookup, refused)
    .flatMap((each) => mendedPart(each, lookup, refused))
    .filter(({ part, found }) => found.how !== 'none' || !isNoName(part.raw));
}

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

function mendedPart(each: Spoken, lookup: Lookup, refused: (printed: string) => boolean): Spoken[] {
  const { part, found } = each;
  if (refused(part.raw) || refused(part.names[0] ?? part.raw)) return [each];
  if (found.how !== 'none') return [each];
  const bare = withoutLeftovers(part.raw, lookup);
  if (bare) return [{ part, found: bare }];
  const several = partedNames(part, lookup);
  if (several) return several;
  const respelled = lookup.mend(part.names[0] ?? part.raw);
  return respelled.how === 'mended' ? [{ part, found: { ...respelled, printed: part.raw } }] : [each];
}
