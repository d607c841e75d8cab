import type { Range, Use } from '../names/entry.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import type { UseOf } from './classes.ts';
import { type Held, type HeldBy, highest, misfits } from './propagate.ts';
import type { Basis, Figure, FrameFormulation, UseClass, UseLevels } from './use-levels.ts';

/** What the likely band of a name rests on. */
export type LikelyWhy = {
  /** `order`: an earlier name holds it. `mark`: behind a usual sign of the one-percent line. `unusual`: the label does not fit. */
  basis: Basis | 'order' | 'mark' | 'unusual';
  /** Percent: the figure itself. */
  atMost?: number;
  /** Index of the earlier mention that holds this one down, or of the sign. */
  after?: number;
  /** Key into dictionary/sources.json. */
  source?: string;
};

/** A share in words. */
export type AmountWord = 'much' | 'some' | 'a-little' | 'a-trace';

export type Likely = { likely?: Range; usual?: number; amount?: AmountWord; likelyWhy?: LikelyWhy };

/** A name of one list as usual practice looks at it; `index` is its place among all mentions. */
export type Listed = {
  index: number;
  of?: UseClass;
  /** Highest registered use of the very name, rinse-off and leave-on. */
  own?: UseOf['own'];
  share: Range;
  /** Colourants and "may contain": outside the order. */
  loose: boolean;
  /** Highest share that the law of some market sets, percent. */
  ceiling?: number;
};

export type LikelyOptions = { kind?: ProductKind; use?: Use; ordered: boolean; line: number; front: number };

type Own = { most: number; basis?: Basis | 'mark' };

/**
 * Likely shares of one list: each name's own highest usual share, passed down the list to the one-percent line,
 * within the shared sums of the frame formulation. Within what the label allows; where both cannot hold, none.
 */
export function likelyShares(list: readonly Listed[], levels: UseLevels, options: LikelyOptions): Likely[] {
  const line = options.ordered ? lineAt(list, levels, options.line) : list.length;
  const wet = list.findIndex(({ of }) => of?.id === 'water' || of?.id === 'plant-water');
  const watery = wet >= 0 && wet < options.front;
  const frame = watery || options.kind === 'oil' ? frameOf(list, levels, options) : undefined;
  const shares = frame?.shares ?? [];
  const own = list.map((name, place) =>
    ownOf(name, tierOf(name, place, line, levels, options), watery, options, levels),
  );
  const held = list.map(({ share, loose, of: use }, place): Held => {
    const sum = shares.findIndex(({ of }) => use !== undefined && of.includes(use.id));
    return {
      least: share.min,
      most: use?.asSupplied ? Number.POSITIVE_INFINITY : own[place]!.most,
      chained: options.ordered && !loose && place < line,
      ...(sum < 0 ? {} : { sum }),
    };
  });
  const caps = shares.map(({ atMost }) => atMost);
  const unfit = new Set<number>();
  // A name that does not fit usual practice loses its bound and its part in a shared sum.
  const free = (places: readonly number[]) => {
    for (const place of places) {
      unfit.add(place);
      held[place]!.most = Number.POSITIVE_INFINITY;
      delete held[place]!.sum;
    }
  };
  const reckon = () => {
    free(misfits(held, caps).names);
    for (const sum of misfits(held, caps).sums) caps[sum] = Number.POSITIVE_INFINITY;
    return highest(held, caps);
  };
  let found = reckon();
  const bandsOf = () =>
    found.map(({ most }, place) =>
      Math.min(most, unfit.has(place) ? 100 : own[place]!.most, list[place]!.share.max),
    );
  // Usual shares that do not fill the product: the first names are more than is usual.
  while (bandsOf().reduce((all, most) => all + most, 0) < 100 - 1e-9) {
    const first = held.findIndex(
      ({ most, sum }, place) => !unfit.has(place) && (most < 100 || sum !== undefined),
    );
    if (first < 0) break;
    free([first]);
    found = reckon();
  }
  const bands = bandsOf();
  let usual = Number.POSITIVE_INFINITY;
  return list.map(({ share, of }, place): Likely => {
    const { most, held: by } = found[place]!;
    if (unfit.has(place)) return { likelyWhy: { basis: 'unusual' } };
    const { chained } = held[place]!;
    const part = own[place]!.most * levels.usualPart;
    if (chained && !of?.asSupplied) usual = Math.min(usual, part);
    if (Math.min(most, own[place]!.most) >= 100) return {};
    const likely = { min: share.min, max: Math.max(share.min, bands[place]!) };
    const reach = Math.min(chained ? usual : part, likely.max * (chained ? 0.8 : levels.usualPart));
    const usually = Math.min(likely.max, Math.max(likely.min, reach));
    return {
      likely,
      usual: usually,
      amount: wordOf(usually, levels),
      likelyWhy: whyOf(own[place]!.most < most ? { by: 'own' } : by, own, place),
    };
  });

  function whyOf(by: HeldBy, figures: readonly Own[], place: number): LikelyWhy {
    if (by.by === 'sum') return { basis: 'frame', atMost: caps[by.sum]!, ...sourceOf('frame') };
    if (by.by === 'earlier') return { basis: 'order', after: list[by.index]!.index };
    const { most, basis = 'order' } = figures[place]!;
    const sign = basis === 'mark' && line < place ? { after: list[line]!.index } : {};
    return { basis, atMost: most, ...sourceOf(basis), ...sign };
  }

  function sourceOf(basis: LikelyWhy['basis']) {
    const source = basis in levels.bases ? levels.bases[basis as Basis].source : undefined;
    return source ? { source } : {};
  }
}

const wordOf = (percent: number, { words: [aLittle, some, much] }: UseLevels): AmountWord =>
  percent >= much ? 'much' : percent >= some ? 'some' : percent >= aLittle ? 'a-little' : 'a-trace';

/** Place from which the list is likely at most one percent: the first usual sign of it, or where the label says so. */
function lineAt(list: readonly Listed[], { markFrom }: UseLevels, line: number): number {
  const mark = list.findIndex(({ of, loose }, place) => of?.mark && !loose && place >= markFrom);
  const hard = list.findLastIndex(({ share, loose }) => share.max > line && !loose) + 1;
  return mark < 0 ? hard : Math.min(mark, hard);
}

type ListPosition = 'front' | 'middle' | 'late' | 'behind';

function tierOf(
  { of }: Listed,
  place: number,
  line: number,
  { lateFrom }: UseLevels,
  { front, ordered }: LikelyOptions,
): ListPosition {
  // Where the order says nothing, neither does the place.
  if (!ordered) return 'front';
  if (place >= line) return 'behind';
  if (place < Math.min(front, of?.frontWithin ?? front)) return 'front';
  return place < lateFrom ? 'middle' : 'late';
}

function ownOf(
  { of: use, own, ceiling }: Listed,
  tier: ListPosition,
  watery: boolean,
  { kind, use: used, line }: LikelyOptions,
  levels: UseLevels,
): Own {
  const none: Own = {
    most: tier === 'behind' ? line : Number.POSITIVE_INFINITY,
    ...(tier === 'behind' && { basis: 'mark' }),
  };
  const lawful: Own = ceiling !== undefined && ceiling < none.most ? { most: ceiling, basis: 'law' } : none;
  const body = !watery && (use?.bulk === 'front' ? tier === 'front' : use?.bulk && tier !== 'behind');
  if (!use || body) return lawful;
  const treats = kind !== undefined && levels.treatments.includes(kind) && use.treatment;
  const figure = {
    front: treats || use.front,
    middle: (treats ? use.front : use.middle) ?? use.front,
    late: use.late ?? use.middle ?? use.front,
    behind: use.behind,
  }[tier];
  const most = figure && percentOf(figure, used);
  // In front stands more than a trace: a product that keeps such a law would not print it there.
  const more = tier === 'front' && (ceiling ?? line) < line && (most ?? 0) > line;
  const within = more ? none : lawful;
  const held: Own =
    most === undefined || most >= within.most ? within : { most, basis: basisOf(figure!, used) };
  const registered = own && percentOf(own, used);
  return registered === undefined || registered >= held.most
    ? held
    : { most: registered, basis: 'name-highest' };
}

const basisOf = ([rinseOff, leaveOn, basis, leaveOnBasis = basis]: Figure, use: Use | undefined): Basis =>
  use === 'leave-on' || (use === undefined && (leaveOn ?? 0) > (rinseOff ?? 0)) ? leaveOnBasis : basis;

function percentOf(
  [rinseOff, leaveOn]: Figure | NonNullable<UseOf['own']>,
  use: Use | undefined,
): number | undefined {
  if (use === 'rinse-off') return rinseOff ?? undefined;
  if (use === 'leave-on') return leaveOn ?? undefined;
  return rinseOff === null || leaveOn === null ? undefined : Math.max(rinseOff, leaveOn);
}

function frameOf(
  list: readonly Listed[],
  levels: UseLevels,
  { kind, use, front }: LikelyOptions,
): FrameFormulation | undefined {
  if (!kind) return undefined;
  const asUsed = use && use !== usualUse[kind] ? levels.otherUse[use] : kind;
  const inFront = list.slice(0, front).flatMap(({ of }) => of?.id ?? []);
  const hasOne = (classes: readonly string[]) => classes.some((each) => inFront.includes(each));
  const kept = levels.kinds[asUsed].find(
    ({ needs, without }) => (!needs || hasOne(needs)) && !(without && hasOne(without)),
  );
  return levels.frames.find(({ id }) => id === kept?.frame);
}
