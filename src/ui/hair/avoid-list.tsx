import { useEffect, useState } from 'preact/hooks';
import type { Avoid, AvoidableRole, Head } from '../../core/hair/head.ts';
import { type Allergen, allergens } from '../../core/names/entry.ts';
import { keepHead } from '../../use/acts/matters/heads.ts';
import { carryOut } from '../carry-out.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBox } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Note } from '../parts/note.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

const roles: AvoidableRole[] = [
  'fragrance-allergen',
  'film-former',
  'water-liftable-film',
  'drying-alcohol',
  'cleansing-strong',
  'preservative',
  'colourant',
  'uv-filter',
  'propellant',
];
const isAllergen = (family: Allergen | AvoidableRole): family is Allergen =>
  (allergens as readonly string[]).includes(family);

/** What an avoid is called: the name as written, or its family's word. */
export const avoidWord = (t: Translate, { name, family, role }: Avoid) =>
  name ?? t(`hair.family.${family ?? role}`);

/** What this head avoids, by name, family or allergen; reactions are remembered with their caution. */
export function AvoidList({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const [name, setName] = useState('');
  const [family, setFamily] = useState<Allergen | AvoidableRole | undefined>();
  const [reacted, setReacted] = useState(false);
  const [error, setError] = useState<string | undefined>();

  const typed = name.trim();
  const read = typed.length > 2 ? world.reading(typed)?.mentions[0]?.found : undefined;
  // What a person types is asked about, not mended: it is kept for every label to come.
  const found = read?.how === 'mended' ? { how: 'none' as const } : read;
  // Labels print one substance under several names: it is avoided under the one they are all read as.
  const readAs = found && found.how !== 'none' && found.how !== 'pattern' ? found.name : undefined;
  const add = async (event: Event) => {
    event.preventDefault();
    const written = readAs ?? typed;
    if (!written && !family) return setError(t('hair.avoid.empty'));
    const avoid: Avoid = {
      id: world.newId(),
      reacted,
      ...(written ? { name: written } : family && (isAllergen(family) ? { family } : { role: family })),
    };
    const word = avoidWord(t, avoid);
    if (head.avoid.some((each) => avoidWord(t, each).toLowerCase() === word.toLowerCase()))
      return setError(t('hair.avoid.already'));
    const said = { key: 'hair.avoid.added', values: { what: word } };
    const added = { ...head, avoid: [...head.avoid, avoid] };
    if (!(await carryOut(world, keepHead(world.remembered, added, said)))) return;
    setName('');
    setFamily(undefined);
    setReacted(false);
    setError(undefined);
  };
  const remove = (avoid: Avoid) => {
    const rest = head.avoid.filter(({ id }) => id !== avoid.id);
    const said = { key: 'hair.avoid.removed', values: { what: avoidWord(t, avoid) } };
    void carryOut(world, keepHead(world.remembered, { ...head, avoid: rest }, said));
  };
  return (
    <Card title={t('hair.avoid')}>
      <p class="hint">{t('hair.avoid.intro')}</p>
      {head.avoid.length > 0 && (
        <ul class="plain-list avoids">
          {head.avoid.map((avoid) => (
            <li key={avoid.id} class={avoid.reacted ? 'avoid reacted' : 'avoid'}>
              <span>
                {avoidWord(t, avoid)}
                {avoid.reacted && (
                  <span class="hint">
                    {'\u00a0· '}
                    {t('hair.avoid.did-react')}
                  </span>
                )}
              </span>
              <Button
                look="quiet"
                label={t('hair.avoid.remove', { what: avoidWord(t, avoid) })}
                onClick={() => remove(avoid)}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      )}
      {head.avoid.some((avoid) => avoid.reacted) && (
        <Note t={t} care>
          <p>{t('hair.avoid.care')}</p>
        </Note>
      )}
      <form class="stack" onSubmit={add}>
        <TextField
          label={t('hair.avoid.name')}
          hint={t('hair.avoid.name.hint')}
          value={name}
          error={error}
          onInput={(value) => {
            setName(value);
            setError(undefined);
          }}
        />
        {readAs && readAs.toLowerCase() !== typed.toLowerCase() && (
          <p class="hint">{t('hair.avoid.known-as', { name: readAs })}</p>
        )}
        {found?.how === 'none' && <Unknown key={typed} world={world} name={typed} onChoose={setName} />}
        <Select
          label={t('hair.avoid.family')}
          empty={t('hair.avoid.family.none')}
          value={family}
          onChange={(value) => {
            setFamily(value);
            setError(undefined);
          }}
          options={[...allergens, ...roles].map((value) => ({ value, label: t(`hair.family.${value}`) }))}
        />
        <CheckBox label={t('hair.avoid.reacted')} checked={reacted} onChange={setReacted} />
        <div class="actions">
          <Button submit>{t('hair.avoid.add')}</Button>
        </div>
      </form>
    </Card>
  );
}

/** A name no label is known to print: said, and close spellings offered. A slip here would hide a warning. */
function Unknown(props: { world: World; name: string; onChoose: (name: string) => void }) {
  const { t } = props.world;
  const [close, setClose] = useState<string[]>([]);
  useEffect(() => {
    let here = true;
    const timer = setTimeout(
      () => void props.world.close([props.name]).then(([names = []]) => here && setClose(names)),
      250,
    );
    return () => {
      here = false;
      clearTimeout(timer);
    };
  }, [props.name]);
  return (
    <div class="stack" aria-live="polite">
      <p class="hint">{t('hair.avoid.unknown')}</p>
      {close.length > 0 && (
        <div class="actions">
          <span class="hint">{t('hair.avoid.close')}</span>
          {close.map((name) => (
            <Button key={name} look="quiet" onClick={() => props.onChoose(name)}>
              {name}
            </Button>
          ))}
        </div>
      )}
    </div>
  );
}
