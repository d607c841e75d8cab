import { headInUse } from '../../use/in-use.ts';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';

/** Whom the answers are for, where several people are kept: in order of their names, changed by one press. */
export function HeadSwitch({ world }: { world: World }) {
  const { t, remembered } = world;
  const head = headInUse(remembered);
  if (!head || remembered.heads.length < 2) return null;
  const { compare } = new Intl.Collator(t.lang, { numeric: true });
  return (
    <Select
      inline
      label={t('panel.verdict.for')}
      options={remembered.heads
        .map(({ id, name }) => ({ value: id, label: name }))
        .toSorted((a, b) => compare(a.label, b.label))}
      value={head.id}
      onChange={(id) => id && void world.change({ do: 'set', settings: { headInUse: id } })}
    />
  );
}
