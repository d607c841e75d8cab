import type { OwnAmounts } from '../amounts/own-amounts.ts';
import type { Allergen, Role } from '../names/entry.ts';

export const thicknesses = ['fine', 'medium', 'coarse'] as const;
export const porosities = ['low', 'medium', 'high'] as const;
export const densities = ['low', 'medium', 'high'] as const;
export const shapes = ['wavy', 'curly', 'coily'] as const;
export const scalps = ['oily', 'normal', 'dry', 'sensitive', 'flaky'] as const;
export const waters = ['soft', 'hard'] as const;
export const damageKinds = ['bleach', 'permanent-colour', 'relaxer', 'perm', 'heat', 'sun-or-salt'] as const;
export const damageLengths = ['ends', 'half', 'most'] as const;
export const damageAges = ['weeks', 'months', 'longer'] as const;

export type Thickness = (typeof thicknesses)[number];
export type Porosity = (typeof porosities)[number];
export type Density = (typeof densities)[number];
export type HairShape = (typeof shapes)[number];
export type Scalp = (typeof scalps)[number];
export type DamageKind = (typeof damageKinds)[number];

export type StretchTest = {
  id: string;
  /** ISO date. */
  date: string;
  /** Lengths of a wet shed strand, millimetres. */
  rest: number;
  stretched: number;
  /** Length after letting go; absent when it broke. */
  after?: number;
  broke: boolean;
};

/** One thing to avoid: a name, an allergen, or a family by its role. `reacted` is remembered with its caution. */
export type Avoid = {
  id: string;
  name?: string;
  family?: Allergen;
  role?: AvoidableRole;
  reacted: boolean;
  note?: string;
};

/** Roles that people avoid as a family. */
export type AvoidableRole = Extract<
  Role,
  | 'film-former'
  | 'water-liftable-film'
  | 'drying-alcohol'
  | 'cleansing-strong'
  | 'fragrance-allergen'
  | 'colourant'
  | 'preservative'
  | 'uv-filter'
  | 'propellant'
>;

export type Allowance = 'rarely' | 'sparingly' | 'some' | 'regular' | 'often';

/** One head of hair. Every answer may be missing: then fit says `cannot tell` and why. */
export type Head = {
  id: string;
  name: string;
  thickness?: Thickness;
  porosity?: Porosity;
  damage?: {
    kinds: DamageKind[];
    /** Share of the length that is damaged. */
    length?: (typeof damageLengths)[number];
    recent?: (typeof damageAges)[number];
  };
  density?: Density;
  shape?: HairShape;
  scalpKind?: Scalp;
  /** What the user noted on the scalp: for them to remember, read by no rule. */
  scalp?: string;
  /** Lime in the water. */
  water?: (typeof waters)[number];
  avoid: Avoid[];
  stretch: StretchTest[];
  /** Reasons of the allowance the user set aside (reason ids), and an allowance set by hand. */
  setAside: string[];
  allowanceByHand?: Allowance;
  /** Grams used at a time, by kind of product. */
  uses?: OwnAmounts;
  added: string;
};
