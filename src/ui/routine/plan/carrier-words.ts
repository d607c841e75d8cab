import type { BuiltPlan } from '../../../core/plan/build/build.ts';
import type { Translate } from '../../words/index.ts';
import { cadenceWords } from '../steps/step-editor.tsx';

/** Which step carries the protein, how often it comes, and which other step two products do in turns. */
export function carrierWords(t: Translate, { carrier, steps }: Pick<BuiltPlan, 'carrier' | 'steps'>): string {
  if (carrier === 'none') return t('plan.carrier.none');
  const step = steps.find(({ kind }) => kind === carrier);
  const kind = t(`routine.kind.${carrier}`);
  const inTurns = steps.find(
    (each) => each.kind !== carrier && each.cadence.every === 'nth-wash' && each.cadence.from !== undefined,
  );
  const turns = inTurns ? t(`routine.kind.${inTurns.kind}`) : 'none';
  return step && step.cadence.every !== 'wash'
    ? t('plan.carrier.seldom', { kind, cadence: cadenceWords(t, step.cadence), turns })
    : t('plan.carrier.in', { kind, turns });
}
