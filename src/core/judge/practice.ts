import type { BringsPractice } from '../amounts/brings.ts';
import type { InHandPractice } from '../amounts/in-hand.ts';
import type { Markets } from '../amounts/market.ts';
import type { Allowance, DamageKind, Density, HairShape, Porosity, Scalp, Thickness } from '../hair/head.ts';
import type { LearnPractice } from '../learn/learn-practice.ts';
import type { ProteinSize, Range, Use } from '../names/entry.ts';
import type { PlanPractice } from '../plan/build/plan-practice.ts';
import type { ProductKind } from '../product/product.ts';
import type { MatterPractice } from './matter.ts';

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

/** dictionary/allowance.json: all `common practice`; the user can overrule every number. */
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
export type WashDayPractice = BringsPractice &
  InHandPractice & {
    /** What the kinds do in a wash day. */
    kinds: {
      /** Counted as a strengthening treatment: spaced by the allowance, shampooed out, followed up. */
      strengthening: ProductKind[];
      cleansing: ProductKind[];
      /** Follows a strengthening treatment, free of protein. */
      followUp: ProductKind[];
      /** Steps that can bring the day its moisture. */
      moisture: ProductKind[];
      /** Of the strengthening ones: no protein, may come oftener. */
      bond: ProductKind[];
      /** Give hold. */
      holding: ProductKind[];
      /** Belong to no place in the order. */
      anywhere: ProductKind[];
      /** Usual order of a wash day: where an added step goes. */
      order: ProductKind[];
      /** What a suggestion may send the user to look for. */
      wished: ProductKind[];
    };
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
  | 'strongTreatmentTimes'
  /** Days between bond treatments. */
  | 'bondDays'
  /** Filled steps from which "protein in every step" is asked. */
  | 'everyStepFrom'
  /** Dew points in °C below and above which a humectant-heavy leave-on is remarked on. */
  | 'dryDewPoint'
  | 'humidDewPoint'
  /** Wash days in the log from which the tally is shown. */
  | 'tallyFrom';

/** A figure for each step of the tolerance, `rarely` first; read between its steps. */
type ByTolerance = [number, number, number, number, number];
/** What a protein counts as where trade calls it large and measurement small. */
export type SizesBy = 'practice' | 'measured';
type Three<K extends string> = Record<K, number>;

/** dictionary/judge.json: what one product is weighed by. Common practice throughout. */
export type JudgePractice = {
  /** Part of what is used that counts, against a leave-on cream: by kind, and where it is used otherwise than usual. */
  worn: Record<ProductKind, { protein: number; weight: number }>;
  otherUse: Record<Use, ProductKind>;
  dose: {
    /** What a percent counts by size, and where trade says large and measurement small. */
    bySize: Record<ProteinSize, number>;
    measuredSmall: number;
    /** Which of the two the user goes by; absent: between them, and a no that measurement denies is softened. */
    sizesBy?: SizesBy;
    /** Daltons up to which measurement says small. */
    smallUpTo: number;
    /** How much more a protein made to cling counts. */
    clings: number;
    /** The same of whole proteins, which dry to a hard film (gelatin). */
    hardens: number;
    /** Dose at each wash that suits, and the most that may be used with care. */
    suits: ByTolerance;
    upTo: ByTolerance;
    /** From this a product counts as one that carries protein. */
    matters: number;
  };
  weight: {
    /** Percent of a plain oil, left on, that strands carry. */
    carries: Three<Thickness>;
    porosity: Three<Porosity>;
    density: Three<Density>;
    shape: Three<HairShape>;
    oilyScalp: number;
    /** What lies on the cuticle counts for. */
    film: Three<Porosity>;
    /** How many times as much may be used with care. */
    upTo: number;
    /** The same for all that a day leaves on, products together. */
    together: { suits: number; upTo: number };
    /** An ingredient of this weight is named. */
    namedFrom: number;
  };
  care: {
    /** Softness that a step of care must bring. */
    wants: Three<Thickness>;
    porosity: Three<Porosity>;
    shape: Three<HairShape>;
    density: Three<Density>;
    dryScalp: number;
    perDamage: number;
    atMost: number;
    /** What softness and richness of a kind count for; a treatment is not there to soften. */
    steps: Partial<Record<ProductKind, { soft: number; rich: number; atMostWithCare?: boolean }>>;
    /** Share of what is wanted that is enough, and that is a little. */
    enough: number;
    little: number;
    /** Softness that a percent of protein takes. */
    proteinStiffens: number;
    /** Dryness left on that is borne. */
    bearsDry: Three<Thickness>;
    bearsDryLeast: number;
    dryPerDamage: number;
    dryScalpBears: number;
    /** Part of its dryness that counts where little is used: by kind. */
    dryIn: Partial<Record<ProductKind, number>>;
    softMakesUp: number;
    dryUpTo: number;
    bearsStiff: Three<Thickness>;
    namedFrom: number;
  };
  wash: {
    /** Harshness of one percent, and what takes it off. */
    perStrong: number;
    perSoap: number;
    soapAtMost: number;
    perAmphoteric: number;
    perSoft: number;
    /** What a percent of weaker cleansers counts for in cleaning. */
    mildCounts: number;
    amphotericCounts: number;
    clayCounts: number;
    strongFrom: number;
    liftsFrom: number;
    /** Softness from which a cleanser with little cleansing matter is a co-wash; below it something unknown washes. */
    creamyFrom: number;
    /** Harshness that is borne: untouched hair washed seldom, and what changes it. */
    bears: number;
    scalp: Three<Scalp>;
    shape: Three<HairShape>;
    perDamage: number;
    /** Taken off by the square of the days between washes. */
    perDaysSquared: number;
    bearsLeast: number;
    upTo: number;
    /** Cleaning power that a scalp asks for. */
    asks: Three<Scalp>;
    /** How much more is borne where flakes call for it; and at each doubling of the washes between. */
    scalpCalls: number;
    perDoubling: number;
    /** Days between washes where that is not told. */
    usualEvery: number;
  };
  /** Large proteins left on build up from this dose, on hair of less tolerance than this. */
  large: { stays: { from: number; upToTolerance: number } };
  /** Damage and tolerance from which a day wants some protein. */
  needs: { from: number; tolerance: number };
  /** Most protein in what follows a treatment. */
  followUp: { most: number };
  /** From what damage a treatment or a pre-wash is a gain, and by how much a day must be softer. */
  gains: {
    softBy: number;
    softAtMost: number;
    bondFrom: number;
    proteinFrom: number;
    tolerance: number;
    shieldFrom: number;
    /** Kinds, alike in what they do, of which the first is a gain for hair that dries out. */
    extraCare: ProductKind[][];
  };
  /** What a whole day wants of softness. */
  moisture: {
    /** What comes more seldom than this does not carry the other washes. */
    seldomFrom: number;
    leaveOnCounts: number;
    enough: number;
    little: number;
    /** More than this is no gain. */
    most: number;
  };
  sources: string[];
};

export type Practice = {
  /** dictionary/amounts/markets.json */
  markets: Markets;
  allowance: AllowancePractice;
  washDay: WashDayPractice;
  matter: MatterPractice;
  judge: JudgePractice;
  /** dictionary/plan.json */
  plan: PlanPractice;
  /** dictionary/learn.json */
  learn: LearnPractice;
};
