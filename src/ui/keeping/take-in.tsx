import { useState } from 'preact/hooks';
import type {
  FileIssue,
  FileReading,
  ImportHow,
  ImportPlan,
  PanelStore,
} from '../../store/files/panel-store.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { Field } from '../parts/controls/field.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

type Good = Extract<FileReading, { ok: true }>['everything'];
const namesShown = 8;
const issuesShown = 12;

/** Takes a file in: read, what is wrong with it line by line, or what it would change; then, if wanted, done. */
export function TakeIn({ world, door }: { world: World; door: PanelStore }) {
  const { t } = world;
  const [issues, setIssues] = useState<FileIssue[]>([]);
  const [file, setFile] = useState<Good | undefined>();
  const [plan, setPlan] = useState<ImportPlan | undefined>();

  const read = async (picked: File | undefined) => {
    setPlan(undefined);
    setFile(undefined);
    setIssues([]);
    if (!picked) return;
    const reading = door.readFile(await picked.text());
    if (!reading.ok) return setIssues(reading.issues);
    setFile(reading.everything);
    setPlan(await door.plan(reading.everything, 'merge'));
  };
  const take = async () => {
    if (!file || !plan) return;
    // Planned anew: something may have been kept since the plan was shown.
    const { changes } = await door.plan(file, plan.how);
    if (!(await carryOut(world, { changes, say: { key: 'keeping.import.done' } }))) return;
    setPlan(undefined);
    setFile(undefined);
  };
  return (
    <section class="stack">
      <Field
        label={t('keeping.import')}
        hint={t('keeping.import.hint')}
        error={issues.length > 0 ? t('keeping.import.bad') : undefined}
      >
        {(ids) => (
          <input
            {...ids}
            type="file"
            accept=".json,application/json"
            onChange={(event) => void read(event.currentTarget.files?.[0])}
          />
        )}
      </Field>
      {issues.length > 0 && <Issues t={t} issues={issues} />}
      {plan && file && (
        <>
          <Choice<ImportHow>
            legend={t('keeping.import.how')}
            layout="list"
            value={plan.how}
            onChange={async (how) => setPlan(await door.plan(file, how))}
            options={(['merge', 'replace'] as const).map((value) => ({
              value,
              label: t(`keeping.import.${value}`),
              hint: t(`keeping.import.${value}.hint`),
            }))}
          />
          <Tallies t={t} plan={plan} />
          <div class="actions">
            <Button look="strong" onClick={take}>
              {t('keeping.import.do')}
            </Button>
            <Button onClick={() => void read(undefined)}>{t('keeping.import.not-now')}</Button>
          </div>
          <p class="hint">{t('keeping.import.copy')}</p>
        </>
      )}
    </section>
  );
}

function Issues({ t, issues }: { t: Translate; issues: FileIssue[] }) {
  return (
    <div class="note care" role="alert">
      <ul class="plain-list issues">
        {issues.slice(0, issuesShown).map(({ line, column, path, said }) => (
          <li key={`${line}:${column}:${path}:${said.key}`}>
            <strong>{t('keeping.import.place', { line: String(line), column: String(column) })}</strong>
            {path && (
              <>
                {' '}
                <code>{path}</code>
              </>
            )}
            : {t(said.key, said.values)}
          </li>
        ))}
      </ul>
      {issues.length > issuesShown && <p>{t('keeping.import.more', { n: issues.length - issuesShown })}</p>}
    </div>
  );
}

function Tallies({ t, plan }: { t: Translate; plan: ImportPlan }) {
  const list = new Intl.ListFormat(t.lang, { type: 'unit' });
  const some = (names: string[]) =>
    list.format(names.length > namesShown ? [...names.slice(0, namesShown), '…'] : names);
  const changing = plan.tallies.filter(({ added, changed, removed }) => added + changed + removed > 0);
  return (
    <section class="stack" aria-live="polite">
      <h4>{t('keeping.import.would')}</h4>
      {changing.length === 0 && <p>{t('keeping.import.nothing')}</p>}
      <ul class="plain-list tallies">
        {changing.map((tally) => {
          const counts = (['added', 'changed', 'removed', 'same'] as const)
            .filter((what) => tally[what] > 0)
            .map((what) => t(`keeping.tally.${what}`, { n: tally[what] }));
          return (
            <li key={tally.thing}>
              {t('keeping.tally', { thing: t(`keeping.thing.${tally.thing}`), what: list.format(counts) })}
              {tally.changedNames.length > 0 && (
                <p class="hint">{t('keeping.tally.names', { names: some(tally.changedNames) })}</p>
              )}
              {tally.removedNames.length > 0 && (
                <p class="hint">{t('keeping.tally.removed-names', { names: some(tally.removedNames) })}</p>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
