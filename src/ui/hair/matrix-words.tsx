import { type Head, porosities, thicknesses } from '../../core/hair/head.ts';
import type { AllowancePractice } from '../../core/judge/practice.ts';
import type { Translate } from '../words/index.ts';

/** The matrix in words: what each cell means for a wash day. A list, since its columns do not fit in 320 px. */
export function MatrixWords(props: { t: Translate; practice: AllowancePractice; head: Head }) {
  const { t, practice, head } = props;
  return (
    <dl class="in-words">
      {thicknesses.flatMap((thickness) =>
        porosities.map((porosity) => {
          const level = practice.base[thickness][porosity];
          const { products, leaveOns, large, daysBetweenTreatments } = practice.levels[level];
          const mine = head.thickness === thickness && head.porosity === porosity;
          return (
            <div key={thickness + porosity} class={mine ? 'mine' : undefined}>
              <dt>
                {t('hair.matrix.cell', {
                  thickness: t(`hair.thickness.${thickness}`),
                  porosity: t(`hair.porosity.${porosity}`).toLocaleLowerCase(t.lang),
                  level: t(`hair.allowance.level.${level}`),
                })}
              </dt>
              <dd>
                {t('hair.matrix.numbers', {
                  products,
                  leaveOns,
                  large: t(`hair.large.${large}`),
                  days: daysBetweenTreatments,
                })}
              </dd>
            </div>
          );
        }),
      )}
    </dl>
  );
}
