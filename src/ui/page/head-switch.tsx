import { headInUse } from '../../use/in-use.ts';
import { Select } from '../parts/controls/select.tsx';
import { useFocusOn } from '../parts/focus/focus-on.ts';
import { byName } from '../people/by-name.ts';
import type { World } from '../world.ts';

/** Whom the answers are for, where several people are kept: in order of their names, changed by one press. */
export function HeadSwitch({ world }: { world: World }) {
  const { t, remembered } = world;
  const head = headInUse(remembered);
  const asked = world.detail && 'whom' in world.detail ? world.detail : undefined;
  useFocusOn(asked, '#whom select');
  if (!head || remembered.heads.length < 2) return null;
  return (
    <div id="whom">
      <Select
        inline
        label={t('panel.verdict.for')}
        options={byName(t, remembered.heads).map(({ id, name }) => ({ value: id, label: name }))}
        value={head.id}
        onChange={(id) => id && void world.change({ do: 'set', settings: { headInUse: id } })}
      />
    </div>
  );
}
