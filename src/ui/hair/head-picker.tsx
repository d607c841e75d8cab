import { keepHead, newHead } from '../../use/heads.ts';
import { headInUse } from '../../use/in-use.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';

const buttonsUpTo = 4;

/** Whose hair is in view: buttons for a few heads, a menu for many. The choice holds for every place. */
export function HeadPicker({ world }: { world: World }) {
  const { t, remembered } = world;
  const inUse = headInUse(world.remembered);
  const { heads } = remembered;
  const use = (id: string) => void world.change({ do: 'set', settings: { headInUse: id } });
  const add = () =>
    void carryOut(
      world,
      keepHead(world.remembered, newHead(world, t('hair.nth-head', { n: heads.length + 1 }))),
    );
  return (
    <div class="heads">
      {heads.length > 1 && heads.length <= buttonsUpTo && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields
        <div class="actions" role="group" aria-label={t('hair.whose')}>
          {heads.map((head) => (
            <Button key={head.id} pressed={head.id === inUse?.id} onClick={() => use(head.id)}>
              {head.name}
            </Button>
          ))}
        </div>
      )}
      {heads.length > buttonsUpTo && (
        <Select
          label={t('hair.whose')}
          value={inUse?.id}
          onChange={(id) => id && use(id)}
          options={heads.map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      <Button look="quiet" onClick={add}>
        {t('hair.another')}
      </Button>
    </div>
  );
}
