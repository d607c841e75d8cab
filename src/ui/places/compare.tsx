import { useEffect, useRef, useState } from 'preact/hooks';
import { AmountRows } from '../compare/amounts.tsx';
import { Choose } from '../compare/choose.tsx';
import { AlignedNames } from '../compare/names.tsx';
import { type Compared, comparedOf, pinnedOf } from '../compare/pinned.ts';
import { Row, Rows } from '../compare/table.tsx';
import { PriceRow, VerdictRows } from '../compare/verdict-rows.tsx';
import { sumsOf } from '../describe/strip.ts';
import { Button } from '../parts/button.tsx';
import { Empty } from '../parts/empty.tsx';
import { Help } from '../parts/help.tsx';
import type { World } from '../world.ts';

const narrow = 2;
const wide = 4;

/** How many products fit side by side. */
function useRoom() {
  const place = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState(narrow);
  useEffect(() => {
    if (!place.current || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(([seen]) =>
      setRoom((seen?.contentRect.width ?? 0) >= 40 * 16 ? wide : narrow),
    );
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return { place, room };
}

/** Two products side by side, four where there is room: pinned ones first, then the one on the page in view. */
export function ComparePlace({ world }: { world: World }) {
  const { t, remembered, page } = world;
  const { place, room } = useRoom();
  const pins = remembered.settings.pinned ?? [];
  const pinned = pinnedOf(pins, remembered.products);
  const onPage = (page?.lists ?? []).map(({ text, product }) =>
    comparedOf(text, { url: page?.url ?? '', ...(product ?? { name: page?.title ?? '' }) }),
  );
  const asked = onPage[(page?.lists ?? []).findIndex(({ id }) => String(id) === world.detail)] ?? onPage[0];
  const texts = pinned.map(({ text }) => text);
  const passing = asked && pinned.length < wide && !texts.includes(asked.text) ? [asked] : [];
  const all = [...pinned, ...passing];
  // Where only two fit: the first pinned beside the newest met.
  const shown = all.length <= room ? all : room === narrow ? [all[0]!, all.at(-1)!] : all.slice(0, room);
  const pin = (next: string[]) => world.change({ do: 'set', settings: { pinned: next.slice(-wide) } });
  const columns = shown.map((product) => ({ product, reading: world.reading(product.text, product.use) }));
  const readings = columns.map(({ reading }) => reading);
  const unpin = async ({ pin: gone, name }: Compared) => {
    await pin(pins.filter((each) => each !== gone));
    world.say(t('compare.unpinned', { name }), true);
  };
  const names = shown.map(({ name }, column) =>
    shown.some((other, at) => at < column && other.name === name) ? `${name} (${column + 1})` : name,
  );
  return (
    <div class="stack" ref={place}>
      <h2>{t('shell.place.compare')}</h2>
      {all.length === 0 ? (
        <Empty title={t('compare.empty.title')}>
          <p>{t('compare.empty.how')}</p>
        </Empty>
      ) : (
        <>
          {all.length === 1 && all[0] && (
            <p>
              {t(pins.includes(all[0].pin) ? 'compare.one' : 'compare.one-in-view', { name: all[0].name })}
            </p>
          )}
          {all.length > shown.length && (
            <p class="hint">{t('compare.hidden', { n: all.length - shown.length })}</p>
          )}
          <Rows columns={names}>
            <Row
              head={<span class="sr">{t('compare.about')}</span>}
              cells={columns.map(({ product, reading }) => (
                <>
                  <span class="hint">
                    {[product.maker, product.kind && t(`routine.kind.${product.kind}`)]
                      .filter(Boolean)
                      .join(' · ')}
                  </span>
                  <span>{reading && sumsOf(reading, t)}</span>
                  <span class="actions">
                    {pins.includes(product.pin) ? (
                      <Button
                        look="quiet"
                        label={`${t('compare.unpin')}: ${product.name}`}
                        onClick={() => unpin(product)}
                      >
                        {t('compare.unpin')}
                      </Button>
                    ) : (
                      <Button
                        look="quiet"
                        label={`${t('compare.pin')}: ${product.name}`}
                        onClick={() => pin([...pins, product.pin])}
                      >
                        {t('compare.pin')}
                      </Button>
                    )}
                  </span>
                </>
              ))}
            />
            <VerdictRows world={world} columns={columns} />
            <AmountRows world={world} readings={readings} />
            <PriceRow world={world} columns={columns} />
          </Rows>
          <p class="hint">
            {t('compare.scale')} <Help t={t} term="share" />
          </p>
          {shown.length > 1 && <AlignedNames world={world} names={names} readings={readings} />}
        </>
      )}
      {pinned.length < wide && (
        <Choose
          world={world}
          onPage={onPage}
          taken={all.map((each) => each.pin)}
          onAdd={(product) => pin([...pins, product.pin])}
        />
      )}
      {world.openWide && room === narrow && all.length > 1 && (
        <div class="actions">
          <Button onClick={world.openWide}>{t('compare.wide')}</Button>
        </div>
      )}
    </div>
  );
}
