import { useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { keepHead, newHead } from '../../use/acts/matters/heads.ts';
import { headInUse } from '../../use/in-use.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/controls/button.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Note } from '../parts/note.tsx';
import { byName, called } from '../people/by-name.ts';
import type { World } from '../world.ts';

const buttonsUpTo = 4;
const shownAtMost = 12;

/** Whose hair is in view, by name: buttons for a few people, a menu with a search for many. It holds for every place. */
export function HeadPicker({ world }: { world: World }) {
  const { t, remembered } = world;
  const [sought, setSought] = useState('');
  const inUse = headInUse(world.remembered);
  const heads = byName(t, remembered.heads);
  const found = called(heads, sought);
  const use = (id: string) => void world.change({ do: 'set', settings: { headInUse: id } });
  const many = heads.length > buttonsUpTo;
  const buttons = many ? (sought.trim() ? found : []) : heads;
  return (
    <div class="heads">
      {many && (
        <Select
          label={t('hair.whose')}
          value={inUse?.id}
          onChange={(id) => id && use(id)}
          options={heads.map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      {many && <TextField type="search" label={t('plan.people.search')} value={sought} onInput={setSought} />}
      {heads.length > 1 && buttons.length > 0 && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields
        <div class="actions" role="group" aria-label={t('hair.whose')}>
          {buttons.slice(0, shownAtMost).map((head) => (
            <Button
              key={head.id}
              pressed={head.id === inUse?.id}
              onClick={() => {
                setSought('');
                use(head.id);
              }}
            >
              {head.name}
            </Button>
          ))}
        </div>
      )}
      {sought.trim() !== '' && (
        <p class="hint" aria-live="polite">
          {t('plan.people.found', { n: found.length })}
        </p>
      )}
      <AddPerson world={world} onUse={use} />
    </div>
  );
}

/** One more person: the name first, so that nobody is a number. For whom the answers are changes only when asked. */
function AddPerson({ world, onUse }: { world: World; onUse: (id: string) => void }) {
  const { t, remembered } = world;
  const [name, setName] = useState<string | undefined>();
  const [added, setAdded] = useState<Head | undefined>();
  const inUse = headInUse(remembered);
  const add = async (event: Event) => {
    event.preventDefault();
    const nth = t('hair.nth-head', { n: remembered.heads.length + 1 });
    const head = newHead(world, name?.trim() || nth);
    if (!(await carryOut(world, keepHead(remembered, head)))) return;
    setName(undefined);
    setAdded(head);
  };
  if (added && added.id !== inUse?.id && remembered.heads.some(({ id }) => id === added.id))
    return (
      <Note t={t}>
        <p role="status">{t('plan.people.added', { name: added.name, whose: inUse?.name ?? '' })}</p>
        <div class="actions">
          <Button look="strong" onClick={() => onUse(added.id)}>
            {t('plan.people.describe', { name: added.name })}
          </Button>
          <Button look="quiet" onClick={() => setAdded(undefined)}>
            {t('hair.stretch.not-now')}
          </Button>
        </div>
      </Note>
    );
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
