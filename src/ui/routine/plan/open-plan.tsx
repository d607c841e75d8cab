import { useState } from 'preact/hooks';
import type { Head } from '../../../core/hair/head.ts';
import type { Said } from '../../../core/judge/finding.ts';
import { keepTaken, type TakenPlan, takenAs } from '../../../use/acts/matters/plan-file.ts';
import { carryOut } from '../../carry-out.ts';
import { Field } from '../../parts/controls/field.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import type { World } from '../../world.ts';
import { Fitted } from './fitted.tsx';
import { PlanSteps } from './plan-steps.tsx';

/** More bytes than any plan has: such a file is not even read. */
const bytesAtMost = 4_000_000;

/** Opens the plan that somebody sent: shown and held against this head first, kept only when told so. */
export function OpenPlan({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const [said, setSaid] = useState<Said | undefined>();
  const [taken, setTaken] = useState<TakenPlan | undefined>();
  const { store } = world;
  if (!store) return null;
  const open = async (file: File | undefined) => {
    setTaken(undefined);
    setSaid(undefined);
    if (!file) return;
    if (file.size > bytesAtMost) return setSaid({ key: 'plan.file.too-big' });
    const reading = (await store()).readPlan(await file.text());
    if (reading.ok) setTaken(takenAs(world.remembered, reading.plan, head.id, world));
    else setSaid(reading.said);
  };
  return (
    <Disclosure summary={t('plan.file.open')}>
      <Field
        label={t('plan.file.choose')}
        hint={t('plan.file.hint')}
        error={said && t(said.key, said.values)}
      >
        {(ids) => (
          <input
            {...ids}
            type="file"
            accept=".json,application/json"
            onChange={(event) => void open(event.currentTarget.files?.[0])}
          />
        )}
      </Field>
      {taken && (
        <Preview key={taken.routine.id} world={world} taken={taken} onDone={() => setTaken(undefined)} />
      )}
    </Disclosure>
  );
}

function Preview({ world, taken, onDone }: { world: World; taken: TakenPlan; onDone: () => void }) {
  const { t, remembered } = world;
  const { routine, products, had } = taken;
  const nameOf = (id: string | undefined) =>
    [...products, ...remembered.products].find((product) => product.id === id)?.name ??
    t('routine.step.no-product');
  return (
    <div class="stack offer">
      <h4>{routine.name}</h4>
      {routine.note && <blockquote class="plan-note">{routine.note}</blockquote>}
      <PlanSteps world={world} steps={routine.steps} nameOf={nameOf} />
      <p class="hint">{t('plan.file.brings', { n: products.length })}</p>
      {had.length > 0 && <p class="hint">{t('plan.file.had', { names: had.join(', ') })}</p>}
      <Fitted
        world={world}
        routine={routine}
        brings={products}
        onTake={(fitted) =>
          void carryOut(world, keepTaken({ products, routine: fitted })).then((ok) => ok && onDone())
        }
        onLeave={onDone}
      />
      <p class="hint">{t('routine.caution')}</p>
    </div>
  );
}
