import type { BringsPractice } from '../../../core/amounts/brings.ts';
import type { Translate } from '../../words/index.ts';

type Usual = BringsPractice['exposure']['gel'];

/** What counts where no amount is told, and whose figure it is. */
export const amountHint = (t: Translate, { grams, own, source }: Usual): string =>
  own !== undefined
    ? t('routine.step.grams.own', { grams: own })
    : t(source === 'common-practice' ? 'routine.step.grams.practice' : 'routine.step.grams.hint', { grams });
