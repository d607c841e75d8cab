import type { WashDayPractice } from '../../judge/practice.ts';
import type { Use } from '../../names/entry.ts';
import { isProteinDose, type Mention, type Reading } from '../../reading/reading.ts';

/** yes · no · maybe: the label does not say. */
export type Sure = 'yes' | 'no' | 'maybe';
export type Strength = 'strong' | 'mild';

/** What the rules ask of one label. All numbers are indexes into `Reading.mentions`. */
export type Traits = {
  /** enough: the rules may trust an absence · little: too few names were found · none: no label to read. */
  read: 'enough' | 'little' | 'none';
  protein: Sure;
  /** Proteins that count as a dose. */
  doses: number[];
  /** Doses that stay on the surface. */
  large: number[];
  /** Large doses that may exceed a trace. */
  largeAboveTrace: number[];
  bearing: number[];
  minute: number[];
  surfactants: number[];
  moist: Sure;
  moisture: number[];
  /** A sealing or softening ingredient in front: counts for weight when it stays on. */
  heavy: number[];
  /** Humectants in front, ahead of the one-percent line. */
  humectantsInFront: number[];
  /** The strongest lifting that its films need, and which mentions do. */
  film: Strength | undefined;
  films: number[];
  /** How strongly it lifts; undefined where it holds no cleansing ingredient. */
  lifts: Strength | undefined;
  unread: number[];
};

const indexes = (mentions: readonly Mention[], test: (mention: Mention, index: number) => boolean) =>
  mentions.flatMap((mention, index) => (test(mention, index) ? [index] : []));

/** Reads off a label what the rules ask of it. Pure; an absent reading is a label nobody could read. */
export function traitsOf(reading: Reading | undefined, practice: WashDayPractice): Traits {
  const mentions = reading?.mentions ?? [];
  const { traceAtMost, frontWithin, readAtLeast } = practice.thresholds;
  const inFront = ({ share }: Mention, index: number) =>
    index < frontWithin &&
    share.max > traceAtMost &&
    (reading?.onePercentFrom === undefined || index < reading.onePercentFrom);
  const readable = reading !== undefined && reading.refused === undefined && mentions.length > 0;
  const read = !readable ? 'none' : reading.read < readAtLeast ? 'little' : 'enough';
  const doses = indexes(mentions, isProteinDose);
  const bearing = indexes(mentions, ({ protein }) => protein?.kind === 'protein-bearing');
  const moisture = indexes(mentions, (mention) => mention.moisture.length > 0);
  const films = indexes(mentions, ({ roles }) => roles.some((role) => practice.lifting[role]));
  // A trace of a film former is thin enough for any cleanser.
  const need = ({ roles, share }: Mention) => {
    const strength = strongest(roles.map((role) => practice.lifting[role]));
    return strength && share.max <= traceAtMost ? 'mild' : strength;
  };
  const unsure = read !== 'enough';
  return {
    read,
    protein: doses.length > 0 ? 'yes' : bearing.length > 0 || unsure ? 'maybe' : 'no',
    doses,
    large: doses.filter((index) => mentions[index]!.protein!.size === 'large'),
    largeAboveTrace: doses.filter((index) => {
      const { protein, share } = mentions[index]!;
      return protein!.size === 'large' && share.max > traceAtMost;
    }),
    bearing,
    minute: indexes(mentions, ({ protein }) => protein?.minute === true),
    surfactants: indexes(mentions, ({ protein }) => protein?.kind === 'protein-surfactant'),
    moist:
      moisture.length > 0 && reading?.moisture !== 'none' && reading?.moisture !== 'trace'
        ? 'yes'
        : unsure
          ? 'maybe'
          : 'no',
    moisture,
    heavy: indexes(
      mentions,
      (mention, index) =>
        inFront(mention, index) &&
        (mention.moisture.includes('occlusive') || mention.moisture.includes('emollient')),
    ),
    humectantsInFront: indexes(
      mentions,
      (mention, index) => inFront(mention, index) && mention.moisture.includes('humectant'),
    ),
    film: strongest(films.map((index) => need(mentions[index]!))),
    films,
    lifts: strongest(mentions.flatMap(({ roles }) => roles.map((role) => practice.cleansing[role]))),
    unread: indexes(mentions, ({ found }) => found.how === 'none'),
  };
}

function strongest(strengths: (Strength | undefined)[]): Strength | undefined {
  return strengths.includes('strong') ? 'strong' : strengths.includes('mild') ? 'mild' : undefined;
}

/** Whether what a step leaves on the hair counts as staying there. */
export const staysOn = (use: Use) => use === 'leave-on';
