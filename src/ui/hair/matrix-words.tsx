import type { Head, Porosity, Thickness } from '../../core/head.ts';
import type { AllowancePractice } from '../../core/practice.ts';
import type { Translate } from '../words/index.ts';

const rows: Thickness[] = ['fine', 'medium', 'coarse'];
const columns: Porosity[] = ['low', 'medium', 'high'];

/** The matrix as a table: what each cell means for a wash day, in words and numbers. */
export function MatrixWords(props: { t: Translate; practice: AllowancePractice; head: Head }) {
  const { t, practice, head } = props;
  return (
    <table class="in-words">
      <thead>
        <tr>
          {(['kind', 'level', 'products', 'large', 'days'] as const).map((name) => (
            <th key={name} scope="col">
              {t(`hair.matrix.table.${name}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.flatMap((thickness) =>
          columns.map((porosity) => {
            const level = practice.base[thickness][porosity];
            const { products, leaveOns, large, daysBetweenTreatments } = practice.levels[level];
            const mine = head.thickness === thickness && head.porosity === porosity;
            return (
              <tr key={thickness + porosity} class={mine ? 'mine' : undefined}>
                <th scope="row">
                  {t(`hair.thickness.${thickness}`)},{' '}
                  {t(`hair.porosity.${porosity}`).toLocaleLowerCase(t.lang)}
                </th>
                <td>{t(`hair.allowance.level.${level}`)}</td>
                <td>{t('hair.matrix.table.numbers', { products, leaveOns })}</td>
                <td>{t(`hair.large.${large}`)}</td>
                <td>{daysBetweenTreatments}</td>
              </tr>
            );
          }),
        )}
      </tbody>
    </table>
  );
}
