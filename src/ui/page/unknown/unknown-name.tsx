import { useState } from 'preact/hooks';
import { toldKinds } from '../../../core/names/told-as.ts';
import type { ReadAs } from '../../../core/reading/reading.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Pending } from '../../parts/waiting/pending.tsx';
import type { World } from '../../world.ts';
import { LookUp } from './look-up.tsx';

/** One name nobody could read: close spellings, any other name by search, or what the user knows it to be. */
export function UnknownName(props: {
  world: World;
  printed: string;
  close: readonly string[] | undefined;
  onSettle: (as: ReadAs[string]) => void;
}) {
  const { world, printed, close, onSettle } = props;
  const { t } = world;
  const [open, setOpen] = useState<'search' | 'kind' | undefined>();
  const toggle = (what: 'search' | 'kind') => setOpen(open === what ? undefined : what);
  return (
    <li class="unknown">
      <span class="unknown-name">{printed}</span>
      {close === undefined ? (
        <Pending world={world} />
      ) : close.length > 0 ? (
        <div class="actions">
          <span class="hint">{t('panel.read-as')}</span>
          {close.map((name) => (
            <Button
              key={name}
              label={t('panel.read-as.what', { printed, name })}
              onClick={() => onSettle(name)}
            >
              {name}
            </Button>
          ))}
        </div>
      ) : (
        <span class="hint">{t('panel.unknown.no-close')}</span>
      )}
      <div class="actions">
        <Button
          look="quiet"
          label={t('panel.unknown.search.what', { printed })}
          expanded={open === 'search'}
          onClick={() => toggle('search')}
        >
          {t('panel.unknown.search')}
        </Button>
        <Button
          look="quiet"
          label={t('panel.unknown.tell.what', { printed })}
          expanded={open === 'kind'}
          onClick={() => toggle('kind')}
        >
          {t('panel.unknown.tell')}
        </Button>
      </div>
      {open === 'search' && <LookUp world={world} start={printed} printed={printed} onChoose={onSettle} />}
      {open === 'kind' && (
        <div class="actions">
          {toldKinds.map((as) => (
            <Button key={as} label={`${printed}: ${t(`panel.told.${as}`)}`} onClick={() => onSettle({ as })}>
              {t(`panel.told.${as}`)}
            </Button>
          ))}
        </div>
      )}
    </li>
  );
}
