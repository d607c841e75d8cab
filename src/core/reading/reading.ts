import { type Amount, shareBounds } from '../amounts/bounds.ts';
import { type Likely, likelyShares } from '../amounts/likely.ts';
import type { Market } from '../amounts/market.ts';
import { type Label, type LabelPart, splitLabel } from '../label/split-label.ts';
import type { Allergen, MoistureRole, Protein, Range, Role, Use } from '../names/entry.ts';
import type { Found, Law, Lookup } from '../names/lookup.ts';
import type { ProductKind } from '../product/product.ts';
import { findParts, type ReadAs, type Spoken } from './find-parts.ts';
import { namedWhole } from './tokens.ts';

/** none · trace: every such mention likely at most 1 % · leading: one among the first five ahead of the one-percent line · present: between · unknown: too much unread. */
export type Strength = 'none' | 'trace' | 'present' | 'leading' | 'unknown';

export type Mention = {
  /** The letters on the label, and their offsets in the text (UTF-16 units, `to` exclusive). */
  raw: string;
  from: number;
  to: number;
  found: Found;
  protein?: Protein;
  moisture: MoistureRole[];
  roles: Role[];
  /** Families it surely comes from or belongs to, and those it may come from: its name does not say its source. */
  allergens: Allergen[];
  mayBe: Allergen[];
  /** What EU law has changed for it since 2020. */
  law?: Law;
  /** Class of use whose usual shares hold for it. */
  useClass?: string;
  /** Percent by weight that the label allows. */
  share: Range;
  /** The share as printed on the label, in percent. */
  printed?: number;
} & Likely;

export type Stated = { raw: string; from: number; to: number; allergens: Allergen[]; mayBe: Allergen[] };

export type Reading = {
  mentions: Mention[];
  order: 'descending' | 'uninformative';
  /** Index from which every mention is likely at most 1 %. */
  onePercentFrom?: number;
  protein: Strength;
  moisture: Strength;
  /** Share of mentions found, 0…1. */
  read: number;
  /** Use it was read for: likely shares are of this use. */
  use?: Use;
  /** Market it was read for, where that is known. */
  market?: Market;
  /** A legal ceiling narrowed a share: true only of products that meet EU limits. */
  assumesLimits: boolean;
  /** Families that a sentence beside the list names: surely in it, or maybe ("may contain traces of nuts"). */
  statements?: Stated[];
  /** Set when the text was refused or cut short (word key under `reading.`). */
  refused?: 'too-long' | 'no-list';
};

export type { ReadAs };

export type ReadOptions = {
  use?: Use;
  /** Chooses the frame that likely shares keep to. */
  kind?: ProductKind;
  /** Ceilings of EU law narrow what the label allows only where the product is known to be sold under it. */
  market?: Market;
  readAs?: ReadAs;
};

/**
 * The one door: a label's text becomes a Reading. Never throws on any text; text that is too long, or in
 * which no list can be seen, is refused and says so.
 *
 * `options.use` chooses the legal ceilings (rinse-off or leave-on); without it the larger one holds. They enter
 * what the label allows only in a market where they are law; likely shares keep to them everywhere.
 */
export function readLabel(text: string, lookup: Lookup, options: ReadOptions = {}): Reading {
  if (text.length > lookup.thresholds.longestText) return refusal('too-long');
  const label = splitLabel(text, lookup.remarks);
  if (label.parts.length === 0) return refusal('no-list');

  const spoken = whatCounts(findParts(text, label.parts, lookup, options.readAs ?? {}), lookup);
  if (spoken.length === 0) return refusal('no-list');
  label.parts = spoken.map(({ part }) => part);
  const mentions = spoken.map(({ part, found }) => mentionOf(part, found, lookup));
  const order = saysNothing(label, lookup) ? 'uninformative' : 'descending';
  const assumesLimits = setShares(label.parts, mentions, order, lookup, options);
  const onePercentFrom = order === 'descending' ? freeFrom(mentions, lookup.thresholds.freeBelow) : undefined;
  const read = mentions.filter(({ found }) => found.how !== 'none').length / mentions.length;
  const statements = statedIn(text, lookup);
  const partial: Omit<Reading, 'protein' | 'moisture'> = {
    mentions,
    ...(statements.length > 0 && { statements }),
    order,
    ...(onePercentFrom === undefined ? {} : { onePercentFrom }),
    read,
    ...(options.use && { use: options.use }),
    ...(options.market && { market: options.market }),
    assumesLimits,
  };
  return {
    ...partial,
    protein: strengthOf(partial, isProtein, lookup),
    moisture: strengthOf(partial, ({ moisture }) => moisture.length > 0, lookup),
  };
}

/** The share to reckon with, in percent: likely where practice tells one, else what the label allows. */
export const shareOf = ({ likely, share }: Pick<Mention, 'likely' | 'share'>): Range => likely ?? share;

/** Conditioning protein: neither merely protein-bearing (cannot tell) nor a surfactant built on protein. */
export function isProtein(mention: Pick<Mention, 'protein'>): boolean {
  const kind = mention.protein?.kind;
  return kind !== undefined && kind !== 'protein-bearing' && kind !== 'protein-surfactant';
}

/** Protein that counts as a dose: named peptides used below 10 ppm are shown, never counted. */
export function isProteinDose(mention: Pick<Mention, 'protein'>): boolean {
  return isProtein(mention) && !mention.protein?.minute;
}

function refusal(refused: NonNullable<Reading['refused']>): Reading {
  return {
    mentions: [],
    order: 'uninformative',
    protein: 'unknown',
    moisture: 'unknown',
    read: 0,
    assumesLimits: false,
    refused,
  };
}

/**
 * Names listed in brackets count where they say more than the name before them: "Aqua (Water, Eau)" is one,
 * and so is a protein with what it was made from, "Hydrolyzed Vegetable Protein (Wheat, Corn, Soy)".
 */
function whatCounts(all: Spoken[], lookup: Lookup): Spoken[] {
  const nameOf = ({ found }: Spoken) => (found.how === 'none' ? undefined : found.name);
  const outer = new Map(all.filter(({ part }) => part.within === undefined).map((s) => [s.part.from, s]));
  const headOf = (spoken: Spoken) => outer.get(spoken.part.within!) ?? spoken;
  const inBrackets = Map.groupBy(
    all.filter(({ part }) => part.within !== undefined),
    ({ part }) => part.within,
  );
  const telling = new Set(
    [...inBrackets].flatMap(([within, inner]) => {
      const head = headOf(inner[0]!);
      const more = inner.filter((s) => nameOf(s) && nameOf(s) !== nameOf(head));
      const counts = isProtein(lookup.known(head.found))
        ? more.some(({ found }) => isProtein(lookup.known(found)))
        : more.length > 0;
      return counts ? [within] : [];
    }),
  );
  // "Botanical Blend (Urea, Biotin)": what names nothing itself heads the names in its bracket.
  const onlyHeads = new Set(
    all.flatMap(({ part }) => {
      const named = inBrackets.get(part.from)?.filter(({ found }) => found.how !== 'none') ?? [];
      const before = part.raw.slice(0, Math.max(0, part.raw.search(/[([{]/)));
      const heads =
        part.within === undefined && named.length > 1 && namedWhole(before, lookup).how === 'none';
      return heads ? [part.from] : [];
    }),
  );
  return all.filter((s) => {
    const { within, from } = s.part;
    if (within === undefined) return !onlyHeads.has(from);
    if (onlyHeads.has(within)) return true;
    return telling.has(within) && (!nameOf(s) || nameOf(s) !== nameOf(headOf(s)));
  });
}

function mentionOf(part: LabelPart, found: Found, lookup: Lookup): Mention {
  const known = lookup.known(found);
  const { of: use } = lookup.useOf(found);
  const law = lookup.lawOf(found);
  const { says, mayBe, not } = lookup.sourcesOf(part.raw, found);
  const allergens = [...new Set([...known.allergens, ...says])].filter((family) => !not.includes(family));
  return {
    raw: part.raw,
    from: part.from,
    to: part.to,
    found,
    ...(known.protein ? { protein: known.protein } : {}),
    // Official vocabularies file many proteins under humectants too: protein takes precedence.
    moisture: isProtein(known) ? [] : known.moisture,
    roles: known.roles,
    allergens,
    ...(law && { law }),
    mayBe: mayBe.filter((family) => !allergens.includes(family)),
    ...(use && { useClass: use.id }),
    share: { min: 0, max: 100 },
    ...(part.percent === undefined ? {} : { printed: part.percent }),
  };
}

/** What sentences beside the list say of allergen families; those that name none are left out. */
function statedIn(text: string, lookup: Lookup): Stated[] {
  return lookup.remarks.statementsIn(text).flatMap(({ raw, from, to, things }) => {
    const told = things.map(({ name, sure }) => {
      const { says, mayBe, not } = lookup.sourcesOf(name, { how: 'none', close: [] });
      const named = says.filter((family) => !not.includes(family));
      return sure ? { says: named, mayBe } : { says: [], mayBe: [...named, ...mayBe] };
    });
    const allergens = [...new Set(told.flatMap(({ says }) => says))];
    const mayBe = [...new Set(told.flatMap((each) => each.mayBe))].filter(
      (each) => !allergens.includes(each),
    );
    return allergens.length + mayBe.length > 0 ? [{ raw, from, to, allergens, mayBe }] : [];
  });
}

/** Sets each mention's share in place; true when a legal ceiling narrowed one. */
function setShares(
  parts: LabelPart[],
  mentions: Mention[],
  order: Reading['order'],
  lookup: Lookup,
  { use, kind, market }: ReadOptions,
): boolean {
  let narrowed = false;
  const listOf = ({ list, within }: LabelPart) => (within === undefined ? `${list}` : `${list} in ${within}`);
  for (const group of Map.groupBy(mentions.keys(), (index) => listOf(parts[index]!)).values()) {
    const amounts = [...group].map((index) => {
      const mention = mentions[index]!;
      const loose = parts[index]!.tail === 'may-contain' || mention.roles.includes('colourant');
      const ceiling = lookup.ceiling(mention.found, use);
      return { index, loose, ceiling, printed: mention.printed };
    });
    const bounds = (lawful: boolean, printed: boolean) => {
      const list = amounts.map(({ loose, ceiling, printed: share }): Amount => {
        const free = loose || order === 'uninformative';
        const most = Math.min(
          loose ? lookup.thresholds.colourantsAtMost : 100,
          lawful ? (ceiling ?? 100) : 100,
        );
        return printed && share !== undefined
          ? { least: share, most: share, free }
          : { least: 0, most, free };
      });
      return shareBounds(list, lookup.thresholds.freeBelow);
    };
    // A label that contradicts a ceiling is not sold under it; one that contradicts itself keeps its order only.
    const plain = bounds(false, true) ?? bounds(false, false);
    const lawful = market === 'eu' ? bounds(true, true) : plain;
    const shares = lawful ?? plain ?? amounts.map(() => ({ min: 0, max: 100 }));
    narrowed ||= lawful !== null && plain !== null && lawful.some(({ max }, i) => max < plain[i]!.max);
    for (const [i, { index }] of amounts.entries()) mentions[index]!.share = shares[i]!;
    if (!lookup.usual) continue;
    const likely = likelyShares(
      amounts.map(({ index, loose, ceiling }, i) => ({
        index,
        ...lookup.useOf(mentions[index]!.found),
        share: shares[i]!,
        loose,
        ...(ceiling !== undefined && { ceiling }),
      })),
      lookup.usual,
      {
        ordered: order === 'descending',
        line: lookup.thresholds.freeBelow,
        front: lookup.thresholds.leadingWithin,
        ...(use && { use }),
        ...(kind && { kind }),
      },
    );
    for (const [i, { index }] of amounts.entries()) Object.assign(mentions[index]!, likely[i]!);
  }
  // What stands in brackets is a share of the name before them.
  for (const [index, { within }] of parts.entries()) {
    const whole = mentions[parts.findIndex(({ from }) => from === within)]?.share;
    const { share } = mentions[index]!;
    if (within !== undefined && whole)
      mentions[index]!.share = { min: (share.min * whole.min) / 100, max: (share.max * whole.max) / 100 };
    if (within !== undefined)
      likelyWithin(
        mentions[index]!,
        mentions.find((each) => each.from === within),
      );
  }
  return narrowed;
}

/** A part has at most what the whole has. */
function likelyWithin(part: Mention, whole: Mention | undefined) {
  if (!whole?.likely) return;
  const max = Math.min(part.share.max, whole.likely.max);
  part.likely = { min: Math.min(part.share.min, max), max };
  part.usual = Math.min(max, whole.usual ?? max);
  part.likelyWhy = whole.likelyWhy!;
}

/** Drug-style and alphabetical lists, and single names, say nothing about amounts. */
function saysNothing(label: Label, lookup: Lookup): boolean {
  if (label.drugStyle || label.parts.length === 1) return true;
  const names = label.parts.filter(({ tail }) => tail === undefined).map(({ raw }) => raw.toLowerCase());
  return (
    names.length >= lookup.thresholds.alphabeticalFrom &&
    names.every((name, i) => i === 0 || names[i - 1]!.localeCompare(name, 'en') <= 0)
  );
}

function freeFrom(mentions: Mention[], line: number): number | undefined {
  const last = mentions.findLastIndex(
    (each) => shareOf(each).max > line && !each.roles.includes('colourant'),
  );
  return last + 1 < mentions.length ? last + 1 : undefined;
}

function strengthOf(
  reading: Omit<Reading, 'protein' | 'moisture'>,
  counts: (mention: Mention) => boolean,
  { thresholds }: Lookup,
): Strength {
  const indexes = [...reading.mentions.keys()].filter((index) => counts(reading.mentions[index]!));
  const doses = indexes.filter((index) => !reading.mentions[index]!.protein?.minute);
  const ahead = Math.min(thresholds.leadingWithin, reading.onePercentFrom ?? Number.POSITIVE_INFINITY);
  if (reading.order === 'descending' && doses.some((index) => index < ahead)) return 'leading';
  if (reading.read < thresholds.readAtLeast) return 'unknown';
  if (indexes.length === 0) return 'none';
  return doses.some((index) => shareOf(reading.mentions[index]!).max > thresholds.freeBelow)
    ? 'present'
    : 'trace';
}
