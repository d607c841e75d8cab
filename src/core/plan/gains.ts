import { damageOf } from '../hair/tolerance.ts';
import { worstOf } from '../judge/finding.ts';
import { aspectRules } from '../judge/fit.ts';
import type { ProductKind } from '../product/product.ts';
import { type Day, type DayStep, filledSteps, isKind } from '../wash-day/rules/day.ts';
import { softnessOfDay } from '../wash-day/rules/too-little-moisture.ts';

/** What a product does for a day beyond settling what a rule says: words under `rules.gain.`. */
export const gains = ['holds', 'softens', 'rebuilds', 'shields', 'scalp'] as const;
export type Gain = (typeof gains)[number];

/** What this step newly does for this head: only a product that suits it gains anything. */
export function gainsOf(step: DayStep, before: Day, after: Day): Gain[] {
  const findings = aspectRules.flatMap((rule) => rule.ask(step, after.hair));
  // A little softness is still a gain.
  const against = findings.filter(
    ({ answer, aspect, reason }) =>
      answer !== 'suits' && aspect !== 'cleansing' && reason.key !== 'rules.care.thin-somewhat',
  );
  const treats = isKind(after, 'strengthening', step);
  // Treatments come with care of their own, by their rhythm and what follows them.
  if (
    worstOf(treats ? against.filter(({ aspect }) => aspect === 'avoid' || aspect === 'label') : against) !==
    'suits'
  )
    return [];
  const { head, practice } = after;
  const had = (kinds: readonly ProductKind[]) => filledSteps(before).some(({ kind }) => kinds.includes(kind));
  const damage = damageOf(head?.damage, practice.allowance);
  const { gains: from } = practice.judge;
  const softer = after.hair.numbers.every(
    (hair) =>
      Math.min(from.softAtMost, softnessOfDay(after, hair)) > softnessOfDay(before, hair) + from.softBy,
  );
  const { kinds } = practice.washDay;
  const thirsty =
    damage >= from.shieldFrom ||
    head?.scalpKind === 'dry' ||
    head?.shape === 'coily' ||
    head?.porosity === 'high';
  const firstOf = (kinds: readonly ProductKind[]) => kinds.includes(step.kind) && !had(kinds);
  const firstCare = from.extraCare.some(firstOf);
  const tests: Record<Gain, boolean> = {
    holds: kinds.holding.includes(step.kind) && !had(kinds.holding),
    softens: softer || (thirsty && firstCare),
    rebuilds:
      treats &&
      (isKind(after, 'bond', step)
        ? damage >= from.bondFrom
        : damage >= from.proteinFrom &&
          after.hair.numbers.every(({ tolerance }) => tolerance >= from.tolerance)),
    shields: step.kind === 'pre-wash' && !had(['pre-wash']) && thirsty,
    scalp:
      step.traits.wash?.scalp === true &&
      head?.scalpKind === 'flaky' &&
      !filledSteps(before).some(({ traits }) => traits.wash?.scalp),
  };
  return gains.filter((gain) => tests[gain]);
}
