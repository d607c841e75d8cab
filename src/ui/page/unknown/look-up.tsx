import { useEffect, useState } from 'preact/hooks';
import type { KnownName } from '../../../contract/messages.ts';
import { kindWords, knownLines, sourceWords } from '../../describe/mark.ts';
import { Button } from '../../parts/controls/button.tsx';
import { TextField } from '../../parts/controls/field.tsx';
import type { World } from '../../world.ts';
import { Glyphs } from '../mention-row.tsx';

/**
 * Every name the dictionary knows, looked for as one types, with what is known of it and from where. With
 * `onChoose` each may be chosen for the `printed` name that was not known.
 */
export function LookUp(props: {
  world: World;
  start?: string;
  printed?: string;
  onChoose?: (name: string) => void;
}) {
  const { world } = props;
  const { t } = world;
  const [typed, setTyped] = useState(props.start ?? '');
  const [hits, setHits] = useState<KnownName[] | undefined>();
  const asked = typed.trim();
  useEffect(() => {
    let here = true;
    if (asked.length < 2) setHits(undefined);
    else void world.lookUp(asked).then((found) => here && setHits(found));
    return () => {
      here = false;
    };
  }, [asked]);
  return (
    <div class="stack look-up">
      <TextField
        type="search"
        label={t('panel.look-up.name')}
        hint={t('panel.look-up.hint')}
        value={typed}
        onInput={setTyped}
      />
      <p class="hint" role="status">
        {hits && (hits.length > 0 ? t('panel.look-up.found', { n: hits.length }) : t('panel.look-up.none'))}
      </p>
      {hits && hits.length > 0 && (
        <ul class="plain-list mentions">
          {hits.map((hit) => (
            <li key={hit.name}>
              <FoundName {...props} hit={hit} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function FoundName(props: {
  world: World;
  hit: KnownName;
  printed?: string;
  onChoose?: (name: string) => void;
}) {
  const { world, hit } = props;
  const { t } = world;
  const { known } = hit;
  const lines = knownLines(known, t);
  const roles = known.roles.map((role) => t(`page.role.${role}`));
  return (
    <details class="mention">
      <summary>
        <span class="mention-name">
          {hit.name} <Glyphs mention={known} />
        </span>
        <span class="mention-kind">{kindWords(known, t) || roles.join(', ')}</span>
      </summary>
      <div class="mention-more">
        {hit.printed !== hit.name && <p>{t('panel.look-up.also', { name: hit.printed })}</p>}
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {roles.length > 0 && <p>{t('panel.look-up.roles', { roles })}</p>}
        {lines.length + roles.length === 0 && <p>{t('panel.look-up.plain')}</p>}
        <p class="hint">{sourceWords(known.protein?.sources ?? known.sources, t, world.sources ?? {})}</p>
        {props.onChoose && (
          <Button
            label={t('panel.read-as.what', { printed: props.printed ?? '', name: hit.name })}
            onClick={() => props.onChoose?.(hit.name)}
          >
            {t('panel.look-up.choose')}
          </Button>
        )}
      </div>
    </details>
  );
}
