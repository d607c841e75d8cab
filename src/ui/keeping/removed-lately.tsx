import './keeping.css';
import type { Removed } from '../../store/undo-stack.ts';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';

const nameOf = ({ value }: Removed) => ('name' in value ? value.name : value.date);

/** What was removed in this session, of one kind, each with a way back; nothing where nothing was. */
export function RemovedLately({ world, thing }: { world: World; thing: Removed['thing'] }) {
  const { t } = world;
  const removed = world.removed?.filter((each) => each.thing === thing) ?? [];
  if (removed.length === 0) return null;
  const bringBack = async (each: Removed) => {
    const { pictures, ...put } = each;
    const { ok } = await world.change({ do: 'put', ...put }, ...pictures);
    if (ok) world.say(t('keeping.removed.is-back', { name: nameOf(each) }));
  };
  return (
    <Disclosure summary={t('keeping.removed', { n: removed.length })}>
      <ul class="plain-list removed-lately">
        {removed.map((each) => (
          <li key={each.value.id}>
            <span>{nameOf(each)}</span>
            <Button
              look="quiet"
              label={t('keeping.removed.back-what', { name: nameOf(each) })}
              onClick={() => bringBack(each)}
            >
              {t('keeping.removed.back')}
            </Button>
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
