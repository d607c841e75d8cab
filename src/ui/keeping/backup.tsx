import { useEffect, useState } from 'preact/hooks';
import type { PanelStore, StoreState } from '../../store/files/panel-store.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Note } from '../parts/note.tsx';
import { dayWords } from '../products/price.ts';
import type { World } from '../world.ts';
import { TakeIn } from './take-in.tsx';

type Copies = Partial<Record<'import' | 'migration', string>>;

/** Everything in and out as files, how much room is used, what was set aside, copies from before. */
export function Backup({ world }: { world: World }) {
  const { t, remembered, today } = world;
  const [door, setDoor] = useState<PanelStore | undefined>();
  const [state, setState] = useState<StoreState | undefined>();
  const [copies, setCopies] = useState<Copies>({});
  useEffect(() => {
    void world.store?.().then(setDoor);
  }, []);
  useEffect(() => {
    if (!door) return;
    let here = true;
    const look = async () => {
      const [now, before, older] = [
        await door.state(),
        await door.copy('import'),
        await door.copy('migration'),
      ];
      if (!here) return;
      setState(now);
      setCopies({ ...(before && { import: before.when }), ...(older && { migration: older.when }) });
    };
    // Many changes at once (an import, another window) are looked at once.
    const timer = setTimeout(look, state ? 400 : 0);
    return () => {
      here = false;
      clearTimeout(timer);
    };
  }, [door, remembered]);
  if (!door) return null;

  const json = (name: string, text: string) =>
    world.save(`strandline-${name}-${today}.json`, 'application/json', text);
  const csv = (what: 'products' | 'log') => () =>
    world.save(`strandline-${what}-${today}.csv`, 'text/csv;charset=utf-8', door.csv(what, remembered));
  return (
    <Card title={t('keeping.title')}>
      <p>{t('keeping.export.what')}</p>
      <div class="actions">
        <Button look="strong" onClick={async () => json('everything', await door.everything())}>
          {t('keeping.export')}
        </Button>
        <Button onClick={csv('products')}>{t('keeping.export.products')}</Button>
        <Button onClick={csv('log')}>{t('keeping.export.log')}</Button>
      </div>
      <TakeIn world={world} door={door} />
      {state && <Room world={world} state={state} />}
      {state && state.rejects.length > 0 && (
        <Note t={t} care>
          <p>{t('keeping.rejects', { n: state.rejects.length })}</p>
          <div class="actions">
            <Button onClick={() => json('set-aside', JSON.stringify(state.rejects, null, 1))}>
              {t('keeping.rejects.save')}
            </Button>
          </div>
        </Note>
      )}
      {(['import', 'migration'] as const).map(
        (why) =>
          copies[why] && (
            <div class="actions" key={why}>
              <Button
                look="quiet"
                onClick={async () => {
                  const copy = await door.copy(why);
                  if (copy) json(`before-${why}`, copy.text);
                }}
              >
                {t(`keeping.copy.${why}`, { when: dayWords(t, copies[why]) })}
              </Button>
            </div>
          ),
      )}
    </Card>
  );
}

const mb = (bytes: number) => Math.round((bytes / 1024 / 1024) * 100) / 100;

function Room({ world: { t }, state }: { world: World; state: StoreState }) {
  return (
    <>
      <p class="room">
        <meter min={0} max={state.quota} value={state.bytes} aria-label={t('keeping.room')} />{' '}
        <span class="hint">{t('keeping.room.used', { used: mb(state.bytes), all: mb(state.quota) })}</span>
      </p>
      {state.nearlyFull && (
        <Note t={t} care>
          <p>{t('keeping.room.nearly')}</p>
        </Note>
      )}
      {state.readOnly && (
        <Note t={t} care>
          <p>{t(`keeping.read-only.${state.readOnly}`)}</p>
        </Note>
      )}
    </>
  );
}
