import { useEffect, useRef, useState } from 'preact/hooks';
import { bringsFor } from '../../core/amounts/brings.ts';
import {
  type Compared,
  comparedMet,
  isPinOf,
  mostPinned,
  pinnedProducts,
} from '../../use/acts/matters/pins.ts';
import { productById } from '../../use/acts/matters/products.ts';
import { metOnPage } from '../../use/judge/met-product.ts';
import { AmountRows } from '../compare/amounts.tsx';
import { Choose } from '../compare/choose.tsx';
import { columnOf } from '../compare/column.ts';
import { Decision } from '../compare/decision.tsx';
import { AlignedNames } from '../compare/names.tsx';
import { ComparedRow, Rows } from '../compare/table.tsx';
import { PriceRow, VerdictRows } from '../compare/verdict-rows.tsx';
import { dotted } from '../describe/dotted.ts';
import { sumsOf } from '../describe/sums.ts';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Empty } from '../parts/empty.tsx';
import { Help } from '../parts/help.tsx';
import { Thumbnail } from '../products/thumbnail.tsx';
import type { World } from '../world.ts';

const keptOf = ({ remembered }: World, { pin }: Compared) =>
  'product' in pin ? productById(remembered, pin.product) : undefined;

/** The way to a product that is kept, and back. */
const OpenKept = ({ world, id }: { world: World; id: string }) => (
  <Button look="quiet" onClick={() => world.go('products', { product: id })}>
    {world.t('panel.action.kept')}
  </Button>
);

const narrow = 2;
const wide = mostPinned;

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
  const isPinned = (product: Compared) => pins.some((pin) => isPinOf(pin, product.pin));
  const pinned = pinnedProducts(remembered);
  const lists = page?.lists ?? [];
  const onPage = lists.map((list) => comparedMet(metOnPage(list, page)));
  const ref = world.detail && 'list' in world.detail ? world.detail.list : undefined;
  const asked =
    onPage[lists.findIndex(({ id, frame = 0 }) => ref?.id === id && ref.frame === frame)] ?? onPage[0];
  const texts = pinned.map(({ text }) => text);
  const passing = asked && pinned.length < wide && !texts.includes(asked.text) ? [asked] : [];
  const all = [...pinned, ...passing];
  // Where only two fit: the first pinned beside the newest met.
  const shown = all.length <= room ? all : room === narrow ? [all[0]!, all.at(-1)!] : all.slice(0, room);
  const pin = (product: Compared['pin']) => void world.act({ act: 'pin', pin: product });
  const columns = shown.map((product) => columnOf(world, product));
  const readings = columns.map(({ reading }) => reading);
  const checks = columns.map((column) => column.checks);
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
            <p>{t(isPinned(all[0]) ? 'compare.one' : 'compare.one-in-view', { name: all[0].name })}</p>
          )}
          {all.length > shown.length && (
            <p class="hint">{t('compare.hidden', { n: all.length - shown.length })}</p>
          )}
          <Decision world={world} names={names} columns={columns} checks={checks} />
          <Rows columns={names}>
            <ComparedRow
              head={<span class="sr">{t('compare.about')}</span>}
              cells={columns.map(({ product, reading }) => (
                <>
                  <Thumbnail world={world} product={keptOf(world, product)} />
                  <span class="hint">
                    {dotted([product.maker, product.kind && t(`routine.kind.${product.kind}`)])}
                  </span>
                  <span>
                    {reading && sumsOf(reading, t, bringsFor(reading, product, world.practice.washDay))}
                  </span>
                  <span class="actions">
                    {'product' in product.pin && <OpenKept world={world} id={product.pin.product} />}
                    {isPinned(product) ? (
                      <Button
                        look="quiet"
                        label={t('compare.unpin.what', { name: product.name })}
                        onClick={() => void world.act({ act: 'unpin', pin: product.pin })}
                      >
                        {t('compare.unpin')}
                      </Button>
                    ) : (
                      <Button
                        look="quiet"
                        label={t('compare.pin.what', { name: product.name })}
                        onClick={() => pin(product.pin)}
                      >
                        {t('compare.pin')}
                      </Button>
                    )}
                  </span>
                </>
              ))}
            />
            <VerdictRows world={world} columns={columns} checks={checks} />
            <AmountRows world={world} columns={columns} which="differ" />
            <PriceRow world={world} columns={columns} />
          </Rows>
          {shown.length > 1 && (
            <Disclosure summary={t('compare.same')}>
              <Rows columns={names}>
                <AmountRows world={world} columns={columns} which="same" />
              </Rows>
            </Disclosure>
          )}
          <p class="hint">
            {t('compare.scale')}
            {'\u00a0'}
            <Help t={t} term="share" />
          </p>
          {shown.length > 1 && <AlignedNames world={world} names={names} readings={readings} />}
        </>
      )}
      {pinned.length < wide && (
        <Choose world={world} onPage={onPage} taken={all.map((each) => each.pin)} onAdd={pin} />
      )}
      {world.openWide && room === narrow && all.length > 1 && (
        <div class="actions">
          <Button onClick={world.openWide}>{t('compare.wide')}</Button>
        </div>
      )}
    </div>
  );
}
