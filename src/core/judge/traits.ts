import type { Use } from '../names/entry.ts';
import { type ProductKind, usualUse } from '../product/product.ts';
import { isProteinDose, type Mention, type Reading } from '../reading/reading.ts';
import { type Matter, matterOf } from './matter.ts';
import type { Practice } from './practice.ts';
import { usualShare } from './usual-share.ts';

/** yes · no · maybe: the label does not say. */
export type Sure = 'yes' | 'no' | 'maybe';

/** How strongly a cleanser washes. */
export type Wash = {
  /** How hard it is on hair and scalp: 1 is a plain strong shampoo without anything that softens it. */
  harsh: number;
  /** Percent of cleansing matter, weak kinds counted in part: how much oil and film it takes. */
  power: number;
  /** Strong enough for every film; a co-wash lifts none. */
  lifts: 'strong' | 'mild' | undefined;
  /** A co-wash: a conditioner that cleans a little. */
  creamy: boolean;
  /** Made against flakes. */
  scalp: boolean;
};

/** What the rules ask of one product as it is used. Lists are indexes into `Reading.mentions`. */
export type Traits = {
  /** enough: the rules may trust an absence · little: too few names were found · none: no label to read. */
  read: 'enough' | 'little' | 'none';
  /** Whether it carries a dose of protein that is likely enough to matter. */
  protein: Sure;
  /** Likely dose as worn, in percent of a large protein that stays on; and the part of it that is large. */
  dose: number;
  largeDose: number;
  /** The same with every size as measured, where that is smaller and the user did not choose between the two. */
  doseAsMeasured: number;
  /** Percent of protein in the product itself, sizes counted. */
  builds: number;
  /** Names a protein put in for the hair, were it a trace. */
  named: boolean;
  doses: number[];
  large: number[];
  /** Large by trade, small as measured. */
  disputed: number[];
  /** Proteins that are shown, never counted: traces that rinse off, pH setters, enzymes, named peptides, cleansers. */
  uncounted: number[];
  /** Extracts that may bear protein. */
  bearing: number[];
  /** Weight left on the hair as worn, in percent of a plain oil; `film` is the part that lies on the cuticle. */
  weight: number;
  film: number;
  heavy: number[];
  /** Softness, richness, stiffness and dryness of the product itself, per percent. */
  soft: number;
  rich: number;
  stiff: number;
  dry: number;
  softeners: number[];
  stiffeners: number[];
  dryers: number[];
  /** Humectants in front, ahead of the one-percent line. */
  humectantsInFront: number[];
  /** Films it leaves, by what lifts them. */
  films: { mild: number[]; strong: number[] };
  wash: Wash | undefined;
  cleansers: number[];
  bond: boolean;
  unread: number[];
};

type Worn = { kind: ProductKind; use: Use };

/** Reads off a label what the rules ask of it. Pure; an absent reading is a label nobody could read. */
export function traitsOf(reading: Reading | undefined, { kind, use }: Worn, practice: Practice): Traits {
  const { judge, matter, washDay } = practice;
  const mentions = reading?.mentions ?? [];
  // Without water it is an oil by another name, and taken by the drop or the fingertip.
  const byTheDrop =
    (kind === 'leave-in' || kind === 'cream') &&
    mentions.length > 0 &&
    !mentions.some(({ roles }) => roles.includes('water'));
  const worn = judge.worn[byTheDrop ? 'oil' : use === usualUse[kind] ? kind : judge.otherUse[use]];
  const each = mentions.map((mention, index) => ({
    mention,
    index,
    share: usualShare(mention),
    matter: matterOf(mention, matter),
  }));
  const where = (test: (one: (typeof each)[number]) => unknown) =>
    each.filter(test).map(({ index }) => index);
  const sum = (of: (matter: Matter) => number | undefined) =>
    each.reduce((all, { share, matter }) => all + share * ((matter && of(matter)) ?? 0), 0);

  const readable = reading !== undefined && reading.refused === undefined && mentions.length > 0;
  const read = !readable ? 'none' : reading.read < washDay.thresholds.readAtLeast ? 'little' : 'enough';
  const rinsedTrace = (index: number) =>
    use === 'rinse-off' && reading?.onePercentFrom !== undefined && index >= reading.onePercentFrom;
  const counted = each.filter(
    ({ mention, index, matter }) => isProteinDose(mention) && !matter?.noDose && !rinsedTrace(index),
  );
  const doseOf = ({ mention, share }: (typeof each)[number]) =>
    share * doseFactor(mention, practice) * worn.protein;
  const dose = counted.reduce((all, one) => all + doseOf(one), 0);
  const { sizesBy } = judge.dose;
  const disputed = counted.filter(({ mention }) => measuredSmall(mention, practice));
  const large = counted.filter(
    (one) => one.mention.protein!.size === 'large' && !(sizesBy === 'measured' && disputed.includes(one)),
  );
  const bearing = where(({ mention }) => mention.protein?.kind === 'protein-bearing');
  return {
    read,
    protein: dose >= judge.dose.matters ? 'yes' : read === 'enough' ? 'no' : 'maybe',
    dose: round(dose),
    doseAsMeasured: round(
      counted.reduce(
        (all, one) =>
          all +
          (disputed.includes(one) && !sizesBy
            ? one.share * worn.protein * judge.dose.bySize.small
            : doseOf(one)),
        0,
      ),
    ),
    largeDose: round(large.reduce((all, one) => all + doseOf(one), 0)),
    builds: round(counted.reduce((all, one) => all + doseOf(one), 0) / worn.protein),
    named: mentions.some(isProteinDose),
    doses: counted.map(({ index }) => index),
    large: large.map(({ index }) => index),
    disputed: disputed.map(({ index }) => index),
    uncounted: where(
      ({ mention, index }) =>
        mention.protein && !bearing.includes(index) && !counted.some((one) => one.index === index),
    ),
    bearing,
    weight: round(sum(({ weight }) => weight) * worn.weight),
    film: round(sum(({ weight, sits }) => sits && weight) * worn.weight),
    heavy: where(({ share, matter }) => share * (matter?.weight ?? 0) >= judge.weight.namedFrom),
    soft: round(sum(({ soft }) => soft)),
    rich: round(sum(({ weight }) => weight)),
    stiff: round(sum(({ stiff }) => stiff)),
    dry: round(sum(({ dry }) => dry) * (judge.care.dryIn[kind] ?? 1)),
    softeners: where(({ share, matter }) => share * (matter?.soft ?? 0) >= judge.care.namedFrom),
    stiffeners: where(({ share, matter }) => share * (matter?.stiff ?? 0) >= judge.care.namedFrom),
    dryers: where(({ share, matter }) => share * (matter?.dry ?? 0) >= judge.care.namedFrom),
    humectantsInFront: where(
      ({ mention, index }) =>
        mention.moisture.includes('humectant') &&
        index < washDay.thresholds.frontWithin &&
        (reading?.onePercentFrom === undefined || index < reading.onePercentFrom),
    ),
    films: {
      mild: where(({ matter }) => matter?.film === 'mild'),
      strong: where(({ matter }) => matter?.film === 'strong'),
    },
    wash:
      readable && kind === 'cleanser'
        ? washOf(
            sum,
            each.some(({ matter }) => matter?.scalp),
            practice,
          )
        : undefined,
    cleansers: where(({ matter }) => matter?.wash === 'strong' || matter?.wash === 'soap'),
    bond: each.some(({ matter }) => matter?.bond),
    unread: where(({ mention }) => mention.found.how === 'none'),
  };
}

/** What is large by trade and small as measured (wheat cut to 3.5 kDa): not counted as fully large. */
const measuredSmall = ({ protein }: Mention, { judge }: Practice) =>
  protein?.size === 'large' && protein.daltons !== undefined && protein.daltons.max <= judge.dose.smallUpTo;

function doseFactor(mention: Mention, practice: Practice): number {
  const { bySize, measuredSmall: between, sizesBy, clings, hardens } = practice.judge.dose;
  const { size, kind } = mention.protein!;
  const told = { practice: bySize.large, measured: bySize.small, between };
  const factor = measuredSmall(mention, practice) ? told[sizesBy ?? 'between'] : bySize[size];
  return factor * (kind === 'quaternized' ? clings : kind === 'whole' ? hardens : 1);
}

function washOf(
  sum: (of: (matter: Matter) => number | undefined) => number,
  scalp: boolean | undefined,
  { judge: { wash } }: Practice,
): Wash {
  const of = (which: Matter['wash']) => sum((matter) => (matter.wash === which ? 1 : 0));
  const strong = of('strong');
  const soap = of('soap');
  const amphoteric = sum(({ amphoteric }) => (amphoteric ? 1 : 0));
  const soft = sum(({ soft }) => soft);
  const creamy = soft >= wash.creamyFrom;
  const harsh =
    strong * wash.perStrong +
    Math.min(wash.soapAtMost, soap * wash.perSoap) -
    amphoteric * wash.perAmphoteric -
    soft * wash.perSoft;
  const power =
    strong +
    soap +
    (of('mild') - amphoteric) * wash.mildCounts +
    amphoteric * wash.amphotericCounts +
    of('clay') * wash.clayCounts;
  return {
    harsh: round(Math.max(0, harsh)),
    power: round(power),
    lifts:
      strong + soap >= wash.strongFrom ? 'strong' : power >= wash.liftsFrom || !creamy ? 'mild' : undefined,
    creamy,
    scalp: scalp === true,
  };
}

const round = (n: number) => Math.round(n * 100) / 100;
