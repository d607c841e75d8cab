import type { BringsPractice } from '../amounts/brings.ts';
import type { Allowance, DamageKind, Porosity, Thickness } from '../hair/head.ts';
import type { Range, Role } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';

/** What each step of the allowance means for a wash day. */
export type AllowanceLevel = {
  /** Products of a wash day that may carry protein. */
  products: number;
  /** Of these, leave-on products. */
  leaveOns: number;
  /** How large (surface) proteins sit with it. */
  large: 'welcome' | 'sparing' | 'unwelcome';
  /** Days between strengthening treatments. */
  daysBetweenTreatments: number;
};

/** dictionary/allowance.json: all `common practice`; the reader can overrule every number. */
export type AllowancePractice = {
  levels: Record<Allowance, AllowanceLevel>;
  base: Record<Thickness, Record<Porosity, Allowance>>;
  /** Steps by which a kind of damage raises the allowance, before rounding; and the most all of it may raise. */
  damage: Record<DamageKind, number>;
  damageByLength: Record<'ends' | 'half' | 'most', number>;
  damageByAge: Record<'weeks' | 'months' | 'longer', number>;
  damageAtMost: number;
  feel: FeelPractice;
  stretch: StretchPractice;
  sources: string[];
};

/** When the last wash days speak for or against protein: at most one step either way. */
export type FeelPractice = {
  /** The newest this many wash days are asked, and only when there are `atLeast` of them within `withinDays`. */
  entries: number;
  atLeast: number;
  withinDays: number;
  /** A feel counts from this much away from the middle (scale −2 … 2). */
  feltFrom: number;
};

/** How a stretch test is read: lengths in millimetres, extension and recovery in percent. */
export type StretchPractice = {
  /** A test older than this is shown, not counted. */
  countsForDays: number;
  /** Millimetres by which each length read off a ruler may be wrong. */
  readingError: number;
  /** Less extension than this without a break says nothing. */
  leastStretch: number;
  /** A break below this is early. */
  snapsBelow: number;
  /** From here the strand stretches further than wet hair usually does before it breaks. */
  overstretchesFrom: number;
  /** Springs back from this recovery. */
  recoversFrom: number;
  /** Even sound hair does not come back fully from beyond this extension (end of the yield region). */
  recoverableTo: number;
  shortestRest: number;
  /** Regions of the published curve of wet hair, percent extension. */
  curve: { preYieldTo: number; yieldTo: Range; wetBreak: Range };
  sources: string[];
};

/** dictionary/wash-day.json: amounts, retention and thresholds of the routine rules, each with its source. */
export type WashDayPractice = BringsPractice & {
  /** What the kinds do in a wash day. */
  kinds: {
    /** Counted as a strengthening treatment: spaced by the allowance, shampooed out, followed up. */
    strengthening: ProductKind[];
    cleansing: ProductKind[];
    /** Follows a strengthening treatment, free of protein. */
    followUp: ProductKind[];
    /** Steps that can bring the day its moisture. */
    moisture: ProductKind[];
    /** Usual order of a wash day: where an added step goes. */
    order: ProductKind[];
    /** What a suggestion may send the reader to look for. */
    wished: ProductKind[];
  };
  /** Roles that need a cleanser, by the strength that lifts them. */
  lifting: Partial<Record<Role, 'mild' | 'strong'>>;
  /** Roles that lift, by strength. */
  cleansing: Partial<Record<Role, 'mild' | 'strong'>>;
  /** Leave-ons led by sealing or softening ingredients that strands of this thickness carry. */
  heavyLeaveOns: Record<Thickness, number>;
  thresholds: Record<WashDayThreshold, number>;
  /** Key into dictionary/sources.json for every threshold. */
  thresholdSources: Record<WashDayThreshold, string>;
  sources: string[];
};

export type WashDayThreshold =
  /** Share in percent at or below which a mention is a trace. */
  | 'traceAtMost'
  /** A mention is in front among the first this many. */
  | 'frontWithin'
  /** Below this share of names read, a label says too little. */
  | 'readAtLeast'
  /** Percent that a named peptide is used at, at most. */
  | 'minuteAtMost'
  /** Days between strengthening treatments where the hair is not described: about once a week at most. */
  | 'treatmentDays'
  /** Filled steps from which "protein in every step" is asked. */
  | 'everyStepFrom'
  /** Dew points in °C below and above which a humectant-heavy leave-on is remarked on. */
  | 'dryDewPoint'
  | 'humidDewPoint'
  /** Wash days in the log from which the tally is shown. */
  | 'tallyFrom';

export type Practice = { allowance: AllowancePractice; washDay: WashDayPractice };
