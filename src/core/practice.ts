import type { Role } from './entry.ts';
import type { Allowance, DamageKind, Porosity, Thickness } from './head.ts';
import type { ProductKind } from './product.ts';

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
  sources: string[];
};

/** dictionary/wash-day.json: amounts, retention and thresholds of the routine rules, each with its source. */
export type WashDayPractice = {
  /** Grams used and share retained by kind of product; `source` says which row of the exposure table stands in. */
  exposure: Record<ProductKind, { grams: number; retention: number; source: string }>;
  /** Roles that need a cleanser, by the strength that lifts them. */
  lifting: Partial<Record<Role, 'mild' | 'strong'>>;
  thresholds: Record<string, number>;
  sources: string[];
};

export type Practice = { allowance: AllowancePractice; washDay: WashDayPractice };
