import { useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import type { Said } from '../../core/judge/finding.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { copyOf, keepRoutine, newRoutine } from '../../use/acts/matters/routines.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/controls/button.tsx';
import { NumberField, TextField } from '../parts/controls/field.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { byName } from '../people/by-name.ts';
import type { World } from '../world.ts';
import { CopyTo } from './plan/copy-to.tsx';
import { OpenPlan } from './plan/open-plan.tsx';

type Picked = { world: World; head: Head; routine: Routine; routines: readonly Routine[] };

/** Which routine of which head, where there are several. */
export function RoutinePicker({ world, head, routine, routines }: Picked) {
  const { t, remembered } = world;
  const use = (id: string | undefined) =>
    id && void world.change({ do: 'set', settings: { routineInUse: id } });
  if (remembered.heads.length < 2 && routines.length < 2) return null;
  return (
    <div class="pickers">
      {remembered.heads.length > 1 && (
        <Select
          label={t('routine.whose')}
          options={byName(t, remembered.heads).map((one) => ({ value: one.id, label: one.name }))}
          value={head.id}
          onChange={(id) => id && void world.change({ do: 'set', settings: { headInUse: id } })}
        />
      )}
      {routines.length > 1 && (
        <Select
          label={t('routine.which')}
          options={routines.map((one) => ({ value: one.id, label: one.name }))}
          value={routine.id}
          onChange={use}
        />
      )}
    </div>
  );
}

/** Its name and rhythm, copies and new ones, plans from others. */
export function AboutRoutine({ world, head, routine, routines }: Picked) {
  const { t, remembered } = world;
  const [name, setName] = useState<string | undefined>();
  const keep = (changed: Routine, say?: Said) => carryOut(world, keepRoutine(remembered, changed, say));
  const rename = () => {
    const wanted = name?.trim();
    setName(undefined);
    if (wanted && wanted !== routine.name)
      void keep({ ...routine, name: wanted }, { key: 'routine.renamed', values: { name: wanted } });
  };
  const remove = () =>
    carryOut(world, {
      changes: [{ do: 'remove', thing: 'routines', id: routine.id }],
      say: { key: 'routine.removed', values: { name: routine.name } },
    });
  return (
    <div class="stack">
      <Disclosure summary={t('routine.about')}>
        <form
          class="stack"
          onSubmit={(event) => {
            event.preventDefault();
            rename();
          }}
          onFocusOut={rename}
        >
          <TextField label={t('routine.name')} value={name ?? routine.name} onInput={setName} />
        </form>
        <NumberField
          lang={t.lang}
          label={t('routine.wash-every')}
          value={routine.washEvery}
          unit={t('routine.days')}
          min={1}
          max={60}
          wrong={t('routine.whole-number')}
          onNumber={(washEvery) =>
            washEvery !== undefined && Number.isInteger(washEvery) && void keep({ ...routine, washEvery })
          }
        />
        <div class="actions">
          <Button
            onClick={() =>
              void keep(copyOf(world, routine, t('routine.copy-of', { name: routine.name })), {
                key: 'routine.copied',
                values: { name: routine.name },
              })
            }
          >
            {t('routine.copy')}
          </Button>
          <Button
            onClick={() =>
              void keep(newRoutine(world, head.id, t('routine.nth', { n: routines.length + 1 })), {
                key: 'routine.begun',
              })
            }
          >
            {t('routine.another')}
          </Button>
          <Button look="quiet" onClick={() => void remove()}>
            {t('routine.remove')}
          </Button>
        </div>
      </Disclosure>
      <CopyTo world={world} routine={routine} />
      <OpenPlan world={world} head={head} />
    </div>
  );
}
