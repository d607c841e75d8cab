import type { ProteinKind, Role, Use } from '../names/entry.ts';
import type { ProductKind } from '../product/product.ts';

/** What a figure rests on. Quantiles are over the ingredients of a class, of the highest use of each. */
export type Basis =
  | 'name-highest'
  | 'class-p95'
  | 'class-p90'
  | 'class-p75'
  | 'class-median'
  | 'class-highest'
  | 'frame'
  | 'sheets-p75'
  | 'sheets-median'
  | 'practice'
  | 'law';

/** Highest usual share in percent, rinse-off and leave-on (null: no bound), and what it rests on. */
export type Figure = [
  rinseOff: number | null,
  leaveOn: number | null,
  basis: Basis,
  /** Where the leave-on figure rests on something else. */
  leaveOnBasis?: Basis,
];

/** Ingredients that are used alike. The first class that takes a name is its class. */
export type UseClass = {
  id: string;
  /** Regular expression source over the normal form of a name, flags `u`. */
  match?: string;
  not?: string;
  /** Of one of these kinds of protein. */
  protein?: ProteinKind[];
  /** Named peptides used below 10 ppm. */
  minute?: true;
  /** Has one of these roles. */
  roles?: Role[];
  /** Among the first names; further back; far back; behind the one-percent line. The third falls back on the second, it on the first. */
  front?: Figure;
  middle?: Figure;
  late?: Figure;
  behind?: Figure;
  /** First names among which `front` holds, where they are fewer than the usual. */
  frontWithin?: number;
  /** Listed by its weight as supplied, much of it water: its bound does not hold later names down. */
  asSupplied?: true;
  /** In front in a product made for it. */
  treatment?: Figure;
  /** May be the body of a product without water: no bound of its own there, or none among its first names. */
  bulk?: true | 'front';
  /** Usual sign that the one-percent line is reached. */
  mark?: true;
};

/** Highest shared sums by function, of the frame formulations told to poison centres. */
export type FrameFormulation = { id: string; shares: { of: string[]; atMost: number }[] };

/** dictionary/amounts/use-levels.json */
export type UseLevels = {
  bases: Record<Basis, { source: string; status: 'read' | 'practice' }>;
  classes: UseClass[];
  /** Highest registered use of single names where it lies below their class, rinse-off and leave-on. */
  names: Record<string, [rinseOff: number | null, leaveOn: number | null]>;
  frames: FrameFormulation[];
  /** The first frame that holds one of `needs` (if any are named) in front, and none of `without`. */
  kinds: Record<ProductKind, { frame: string; needs?: string[]; without?: string[] }[]>;
  /** The kind whose frame stands in where a product is not used as its kind usually is. */
  otherUse: Record<Use, ProductKind>;
  /** Kinds in which `treatment` holds. */
  treatments: ProductKind[];
  /** Place from which a name stands far back, counted from 0. */
  lateFrom: number;
  /** A mark among the first this many names is not taken for the one-percent line. */
  markFrom: number;
  /** Where a usual share lies between nothing and the highest usual share: 0…1. */
  usualPart: number;
  /** Percent from which a usual share is called a little, some, much; less is a trace. */
  words: [aLittle: number, some: number, much: number];
};
