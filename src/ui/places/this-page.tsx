import { useEffect, useState } from 'preact/hooks';
import type { FoundText, ListRef } from '../../contract/messages.ts';
import { usualUse } from '../../core/product/product.ts';
import { hostOf } from '../../use/acts/matters/sites.ts';
import { metOnPage } from '../../use/judge/met-product.ts';
import { type BroughtPicture, metPasted, type Pasted } from '../../use/pasted.ts';
import { ListReading } from '../page/list-reading.tsx';
import { Paste } from '../page/paste.tsx';
import { Pictures } from '../page/picture/pictures.tsx';
import { usePictures } from '../page/picture/use-pictures.ts';
import { ReachCard } from '../page/reach-card.tsx';
import { LookUp } from '../page/unknown/look-up.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Empty } from '../parts/empty.tsx';
import { ShelfTable } from '../shelf/shelf-table.tsx';
import type { World } from '../world.ts';

const refOf = ({ id, frame = 0 }: FoundText): ListRef => ({ frame, id });
const keyOf = ({ frame, id }: ListRef) => `${frame} ${id}`;

/** The reading of the tab in view, or of a list the user pasted. */
export function ThisPagePlace({ world }: { world: World }) {
  const { t, page, reach, remembered } = world;
  const [pasted, setPasted] = useState<Pasted | undefined>();
  const [taken, setTaken] = useState<BroughtPicture | undefined>();
  const inHand = usePictures(world);
  const ofPage = world.detail && 'picture' in world.detail ? world.detail.picture : undefined;
  useEffect(() => {
    if (!ofPage) return;
    setPasted(undefined);
    inHand.add([{ name: t('panel.picture.on-page'), source: { onPage: ofPage } }]);
  }, [ofPage]);
  // Where no list is seen it may be a picture.
  const readHere = () => inHand.add([{ name: t('panel.picture.on-page'), source: { onPage: { frame: 0 } } }]);
  const asked = world.detail && 'list' in world.detail ? world.detail.list : undefined;
  const [chosen, setChosen] = useState<string | undefined>(asked && keyOf(asked));
  const origin = reach?.origin;
  const paused = remembered.sites.some((site) => site.paused && site.origin === origin);
  // What was read before the site was paused is no reading of it any more.
  const lists = paused ? [] : (page?.lists ?? []);
  const list = lists.find((each) => keyOf(refOf(each)) === chosen) ?? lists[0];
  const nothing = !list && !paused && origin !== undefined;
  const [closed, setClosed] = useState<string[]>([]);
  useEffect(() => {
    let here = true;
    setClosed([]);
    if (nothing) void reach?.closedParts?.().then((names) => here && setClosed(names));
    return () => {
      here = false;
    };
  }, [nothing, page?.url, page?.title]);
  const tryOn = (what: 'readNow' | 'pickList') => async () => {
    if (!(await reach?.[what]())) world.say(t('panel.none.not-let'));
    else if (what === 'pickList') world.say(t('panel.none.picking'));
  };
  if (pasted) {
    const { name, text, photo } = pasted;
    return (
      <>
        <h2>{t('panel.paste.title')}</h2>
        <div class="actions">
          <Button onClick={() => setPasted(undefined)}>{t('panel.paste.done')}</Button>
        </div>
        <ListReading
          key={pasted.text}
          world={world}
          met={metPasted(pasted)}
          onKind={(kind) =>
            setPasted({ name, text, ...(photo && { photo }), ...(kind && { kind, use: usualUse[kind] }) })
          }
        />
      </>
    );
  }
  return (
    <>
      <h2>{t('shell.place.this-page')}</h2>
      {lists.length > 1 && (
        <Select
          label={t('panel.several', { n: lists.length })}
          options={lists.map((each, index) => ({
            value: keyOf(refOf(each)),
            label: `${index + 1}. ${metOnPage(each, page).facts.name}`,
          }))}
          value={list && keyOf(refOf(list))}
          onChange={setChosen}
        />
      )}
      {list ? (
        <ListReading key={`${page?.url} ${keyOf(refOf(list))}`} world={world} met={metOnPage(list, page)} />
      ) : (
        <ShelfTable
          world={world}
          otherwise={
            <Empty
              title={t('panel.none.title')}
              actions={
                origin &&
                !paused && (
                  <>
                    <Button onClick={tryOn('readNow')}>{t('panel.none.read-now')}</Button>
                    <Button onClick={tryOn('pickList')}>{t('panel.none.pick')}</Button>
                    {world.pictures && <Button onClick={readHere}>{t('panel.picture.here')}</Button>}
                  </>
                )
              }
            >
              {paused && origin ? (
                <p>{t('panel.reach.state.paused', { host: hostOf(origin) })}</p>
              ) : (
                <>
                  <p>{t(reach?.here ? 'panel.none.allowed' : 'panel.none.press')}</p>
                  {closed.length > 0 && (
                    <p>
                      {t('panel.none.closed', { n: closed.length, names: closed.map((each) => `“${each}”`) })}
                    </p>
                  )}
                  <p class="hint">{t('panel.none.select')}</p>
                </>
              )}
            </Empty>
          }
        />
      )}
      {list && <ShelfTable world={world} />}
      {world.pictures && (
        <Disclosure summary={t('panel.picture.title')} open={inHand.items.length > 0}>
          <Pictures
            world={world}
            inHand={inHand}
            onTake={(brought) => {
              setTaken(brought);
              world.say(t('panel.picture.taken'));
            }}
          />
        </Disclosure>
      )}
      <Disclosure summary={t('panel.paste.title')} open={taken !== undefined}>
        <Paste
          world={world}
          brought={taken}
          onRead={(read) => {
            setTaken(undefined);
            setPasted(read);
          }}
        />
      </Disclosure>
      <Disclosure summary={t('panel.look-up.title')}>
        <LookUp world={world} />
      </Disclosure>
      <ReachCard world={world} />
    </>
  );
}
