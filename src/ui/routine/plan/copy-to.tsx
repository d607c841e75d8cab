import { useMemo, useState } from 'preact/hooks';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { copiedFor, keepCopy } from '../../../use/acts/matters/plan-file.ts';
import { carryOut } from '../../carry-out.ts';
import { Select } from '../../parts/controls/select.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { byName } from '../../people/by-name.ts';
import type { World } from '../../world.ts';
import { Fitted } from './fitted.tsx';

/** A copy of a plan for another person, with what must change for that hair; who is in view stays in view. */
export function CopyTo({ world, routine }: { world: World; routine: Routine }) {
  const { t, remembered } = world;
  const [to, setTo] = useState<string | undefined>();
  const others = byName(t, remembered.heads).filter(({ id }) => id !== routine.head);
  const person = others.find(({ id }) => id === to);
  const copy = useMemo(() => person && copiedFor(world, routine, person.id), [person?.id, routine]);
  if (others.length === 0) return null;
  return (
    <Disclosure summary={t('plan.copy-to')}>
      <Select
        label={t('plan.copy-to.whom')}
        empty={t('plan.copy-to.choose')}
        options={others.map(({ id, name }) => ({ value: id, label: name }))}
        value={to}
        onChange={setTo}
      />
      {person && copy && (
        <Fitted
          key={copy.id}
          world={world}
          routine={copy}
          onTake={(fitted) =>
            void carryOut(world, keepCopy(fitted, person.name)).then((ok) => ok && setTo(undefined))
          }
          onLeave={() => setTo(undefined)}
        />
      )}
    </Disclosure>
  );
}
