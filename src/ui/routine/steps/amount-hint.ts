import type { BringsPractice } from '../../../core/amounts/brings.ts';
import { type InHandPractice, inHand } from '../../../core/amounts/in-hand.ts';
import type { ProductKind } from '../../../core/product/product.ts';
import type { Translate } from '../../words/index.ts';

type AmountsPractice = BringsPractice & InHandPractice;

/** What counts where no amount is told, and whose figure it is; and what the amount that counts is in the hand. */
export function amountHint(
  t: Translate,
  kind: ProductKind,
  told: number | undefined,
  amounts: AmountsPractice,
): string {
  const { grams, own, source } = amounts.exposure[kind];
  const empty =
    own !== undefined
      ? t('routine.step.grams.own', { grams: own })
      : t(source === 'common-practice' ? 'routine.step.grams.practice' : 'routine.step.grams.hint', {
          grams,
        });
  const measure = inHand(kind, told ?? own ?? grams, amounts);
  return measure ? `${empty} ${t('routine.step.grams.in-hand', { measure })}` : empty;
}
