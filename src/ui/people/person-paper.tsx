import { SheetSteps } from '../routine/sheet/sheet.tsx';
import type { Translate } from '../words/index.ts';
import type { PersonSheet } from './person-words.ts';

function TitledLines({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <p>
        <strong>{title}</strong>
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

/** The words of a person's sheet, on screen as on paper. */
export function PersonPaper({ t, sheet }: { t: Translate; sheet: PersonSheet }) {
  return (
    <>
      <p>{sheet.made}</p>
      <TitledLines title={t('plan.person.hair')} lines={sheet.hair} />
      {sheet.tolerance && (
        <TitledLines title={t('plan.person.tolerance', { level: sheet.tolerance })} lines={sheet.reasons} />
      )}
      <TitledLines title={t('plan.person.unknown')} lines={sheet.unknown} />
      <TitledLines title={t('hair.avoid')} lines={sheet.avoid} />
      {sheet.plans.map(({ sheet: plan, missing, open }) => (
        <section key={plan.name + plan.steps[0]?.id}>
          <h2>{plan.name}</h2>
          <SheetSteps t={t} sheet={{ ...plan, about: plan.about.slice(-1), hair: [] }} />
          <TitledLines title={t('plan.missing')} lines={missing} />
          <TitledLines title={t('plan.person.open')} lines={open} />
        </section>
      ))}
      {sheet.plans.length === 0 && <p>{t('plan.person.no-plan')}</p>}
      {sheet.last && <p>{sheet.last}</p>}
      <TitledLines title={t('plan.watch')} lines={sheet.watch} />
      <p class="hint">{t('routine.caution')}</p>
    </>
  );
}
