import { dotted } from '../../describe/dotted.ts';
import type { Translate } from '../../words/index.ts';
import type { Sheet as Words } from './sheet-words.ts';

/** The words of what is handed over, on screen as on paper. */
export function SheetSteps({ t, sheet }: { t: Translate; sheet: Words }) {
  return (
    <>
      <p>{dotted(sheet.about)}</p>
      {sheet.hair.length > 0 && <p>{dotted(sheet.hair)}</p>}
      {sheet.note && <blockquote class="plan-note">{sheet.note}</blockquote>}
      <ol class="sheet-steps">
        {sheet.steps.map(({ id, kind, product, facts, why, carries }) => (
          <li key={id}>
            <strong>{kind}</strong> {product}
            {carries && <em> ({t('plan.sheet.carries')})</em>}
            <br />
            <span class="hint">
              {dotted(facts)}. {why}
            </span>
          </li>
        ))}
      </ol>
      <p>{sheet.protein}</p>
    </>
  );
}

/** What to look at once the hair is dry. */
export function SheetWatch({ t, sheet }: { t: Translate; sheet: Words }) {
  return (
    <>
      <p>
        <strong>{t('plan.watch')}</strong>
      </p>
      <ul>
        {sheet.watch.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
