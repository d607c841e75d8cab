import type { Reading } from '../../core/reading/reading.ts';
import { headInUse } from '../../use/in-use.ts';
import type { Check } from '../../use/judge-product.ts';
import { verdictOf } from '../describe/strip.ts';
import { Button } from '../parts/button.tsx';
import { Note } from '../parts/note.tsx';
import type { World } from '../world.ts';

/** Shows a name of the list below: opens its row and goes there. */
function showName(index: number) {
  const row = document.getElementById(`name-${index}`);
  if (!(row instanceof HTMLDetailsElement)) return;
  row.open = true;
  row.querySelector('summary')?.focus();
}

/** How this product sits with the head in use, why, and which names decided it. */
export function Verdict(props: { world: World; reading: Reading; checks: readonly Check[] }) {
  const { world, reading, checks } = props;
  const weighed = checks.find(({ about }) => about === 'head');
  const inRoutine = checks.find(({ about }) => about === 'routine');
  const { t, remembered } = world;
  const head = headInUse(remembered);
  if (!head || !weighed)
    return (
      <Note t={t}>
        <p>{t('panel.verdict.no-head')}</p>
        <div class="actions">
          <Button onClick={() => world.go('hair')}>{t('panel.verdict.describe')}</Button>
        </div>
      </Note>
    );
  const reasons = [
    ...new Set(
      weighed.deciding.flatMap(({ reason, condition }) =>
        [reason, condition].flatMap((said) => (said ? [t(said.key, said.values)] : [])),
      ),
    ),
  ];
  const unknowns = [
    ...new Set(weighed.deciding.flatMap(({ unknown }) => (unknown ? [t(unknown.key, unknown.values)] : []))),
  ];
  return (
    <>
      <Note
        t={t}
        answer={weighed.answer}
        about={
          remembered.heads.length > 1 ? (
            <label class="for-head">
              {t('panel.verdict.for')}{' '}
              <select
                value={head.id}
                onChange={(event) =>
                  void world.change({ do: 'set', settings: { headInUse: event.currentTarget.value } })
                }
              >
                {remembered.heads.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
          ) : (
            `${t('panel.verdict.for')} ${head.name}:`
          )
        }
      >
        {[...reasons, ...unknowns].map((words) => (
          <p key={words}>{words}</p>
        ))}
        {weighed.decides.length > 0 && (
          <p class="decided">
            <span class="hint">{t('panel.verdict.why')}</span>
            {weighed.decides.map((index) => (
              <Button key={index} look="quiet" onClick={() => showName(index)}>
                {reading.mentions[index]?.raw}
              </Button>
            ))}
          </p>
        )}
      </Note>
      {inRoutine && <RoutineVerdict world={world} check={inRoutine} />}
    </>
  );
}

/** What adding it would bring to the routine in use, in the words of the strip on the page. */
function RoutineVerdict({ world: { t }, check }: { world: World; check: Check }) {
  const { who, text } = verdictOf(check, t);
  return (
    <Note t={t} answer={check.answer} about={who}>
      <p>{text}</p>
    </Note>
  );
}
