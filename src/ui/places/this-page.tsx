import { useState } from 'preact/hooks';
import { factsOfList } from '../page/facts.ts';
import { ListReading } from '../page/list-reading.tsx';
import { LookUp } from '../page/look-up.tsx';
import { Paste, type Pasted } from '../page/paste.tsx';
import { ReachCard } from '../page/reach-card.tsx';
import { Button } from '../parts/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Empty } from '../parts/empty.tsx';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';

/** The reading of the tab in view, or of a list the reader pasted. */
export function ThisPagePlace({ world }: { world: World }) {
  const { t, page, reach } = world;
  const [pasted, setPasted] = useState<Pasted | undefined>();
  const [chosen, setChosen] = useState<string | undefined>(world.detail);
  const lists = page?.lists ?? [];
  const list = lists.find(({ id }) => String(id) === chosen) ?? lists[0];
  const tryOn = (what: 'readNow' | 'pickList') => async () => {
    if (!(await reach?.[what]())) world.say(t('panel.none.not-let'));
    else if (what === 'pickList') world.say(t('panel.none.picking'));
  };
  if (pasted)
    return (
      <>
        <h2>{t('panel.paste.title')}</h2>
        <div class="actions">
          <Button onClick={() => setPasted(undefined)}>{t('panel.paste.done')}</Button>
        </div>
        <ListReading key={pasted.text} world={world} text={pasted.text} facts={pasted} />
      </>
    );
  return (
    <>
      <h2>{t('shell.place.this-page')}</h2>
      {lists.length > 1 && (
        <Select
          label={t('panel.several', { n: lists.length })}
          options={lists.map((each, index) => ({
            value: String(each.id),
            label: `${index + 1}. ${factsOfList(each, page).name}`,
          }))}
          value={list && String(list.id)}
          onChange={setChosen}
        />
      )}
      {list ? (
        <ListReading
          key={`${page?.url} ${list.id}`}
          world={world}
          text={list.text}
          facts={factsOfList(list, page)}
        />
      ) : (
        <Empty
          title={t('panel.none.title')}
          actions={
            reach?.origin && (
              <>
                <Button onClick={tryOn('readNow')}>{t('panel.none.read-now')}</Button>
                <Button onClick={tryOn('pickList')}>{t('panel.none.pick')}</Button>
              </>
            )
          }
        >
          <p>{t(reach?.here ? 'panel.none.allowed' : 'panel.none.press')}</p>
          <p class="hint">{t('panel.none.select')}</p>
        </Empty>
      )}
      <Disclosure summary={t('panel.paste.title')}>
        <Paste world={world} onRead={setPasted} />
      </Disclosure>
      <Disclosure summary={t('panel.look-up.title')}>
        <LookUp world={world} />
      </Disclosure>
      <ReachCard world={world} />
    </>
  );
}
