import { useState } from 'preact/hooks';
import { keepHead, newHead } from '../../use/heads.ts';
import { headInUse } from '../../use/in-use.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/button.tsx';
import { TextField } from '../parts/field.tsx';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';

const buttonsUpTo = 4;

/** Whose hair is in view, by name: buttons for a few people, a menu for many. The choice holds for every place. */
export function HeadPicker({ world }: { world: World }) {
  const { t, remembered } = world;
  const inUse = headInUse(world.remembered);
  const { compare } = new Intl.Collator(t.lang, { numeric: true });
  const heads = remembered.heads.toSorted((a, b) => compare(a.name, b.name));
  const use = (id: string) => void world.change({ do: 'set', settings: { headInUse: id } });
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
      <AddPerson world={world} />
    </div>
  );
}

/** One more person: the name first, so that nobody is a number. */
function AddPerson({ world }: { world: World }) {
  const { t, remembered } = world;
  const [name, setName] = useState<string | undefined>();
  const add = async (event: Event) => {
    event.preventDefault();
    const nth = t('hair.nth-head', { n: remembered.heads.length + 1 });
    if (await carryOut(world, keepHead(remembered, newHead(world, name?.trim() || nth)))) setName(undefined);
  };
  if (name === undefined)
    return (
      <Button look="quiet" onClick={() => setName('')}>
        {t('hair.another')}
      </Button>
    );
  return (
    <form class="stack" onSubmit={add}>
      <TextField label={t('hair.another.name')} value={name} onInput={setName} />
      <div class="actions">
        <Button look="strong" submit>
          {t('hair.another.add')}
        </Button>
        <Button look="quiet" onClick={() => setName(undefined)}>
          {t('hair.stretch.not-now')}
        </Button>
      </div>
    </form>
  );
}
