import { useState } from 'preact/hooks';
import { bringsFor } from '../../core/amounts/brings.ts';
import type { Said } from '../../core/judge/finding.ts';
import type { Use } from '../../core/names/entry.ts';
import { type Product, productKinds, usualUse } from '../../core/product/product.ts';
import { isSameProduct } from '../../core/product/same-product.ts';
import { comparedProduct } from '../../use/acts/matters/pins.ts';
import { dropPicture } from '../../use/acts/matters/products.ts';
import { gramsAWash } from '../../use/grams-a-wash.ts';
import { judgeKept } from '../../use/judge/judge-met.ts';
import type { Met } from '../../use/knowing.ts';
import { carryOut } from '../carry-out.ts';
import { dotted } from '../describe/dotted.ts';
import { sumsOf } from '../describe/sums.ts';
import { KeptPhoto } from '../log/photo-field.tsx';
import { ListActions } from '../page/list-actions.tsx';
import { Verdict } from '../page/verdict.tsx';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBox, Choice } from '../parts/controls/choice.tsx';
import { NumberField } from '../parts/controls/field.tsx';
import { KeptText } from '../parts/controls/kept-text.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';
import { LabelHistory } from './label/label-history.tsx';
import { dayWords, priceWords, shopOf } from './price.ts';
import { factWords } from './product-row.tsx';
import { Thumbnail } from './thumbnail.tsx';

type Props = { world: World; product: Product; onClose: () => void };

/** All that is kept of one product; kind, use and the rest can be corrected. */
export function ProductDetail({ world, product, onClose }: Props) {
  const { t, remembered } = world;
  const keep = (changed: Product, say?: Said) =>
    void carryOut(world, {
      changes: [{ do: 'put', thing: 'products', value: changed }],
      ...(say && { say }),
    });
  const [label] = product.labels;
  const held = judgeKept(world, product);
  const remove = async () => {
    if ((await world.act({ act: 'remove', product: product.id })).ok) onClose();
  };
  const used = remembered.routines.filter(({ steps }) => steps.some((step) => step.product === product.id));
  return (
    <>
      <div class="actions">
        <Button look="quiet" onClick={onClose}>
          ← {t('products.back', { from: world.from ?? 'products' })}
        </Button>
      </div>
      <Card
        over={factWords(world, product)}
        title={
          <span class="with-picture">
            <Thumbnail world={world} product={product} />
            {product.name}
          </span>
        }
      >
        {held && !held.reading.refused && (
          <Verdict world={world} judged={held.judged} checks={held.checks} notForHair={held.notForHair}>
            <p class="sums">
              {sumsOf(held.reading, t, bringsFor(held.reading, product, world.practice.washDay))}
            </p>
          </Verdict>
        )}
        {label && <ListActions world={world} met={metAgain(product)} opened />}
        <CheckBox
          label={t('products.is-owned')}
          checked={product.owned}
          onChange={(owned) => keep({ ...product, owned })}
        />
        <KeptText
          key={`${product.id}-notes`}
          label={t('products.notes')}
          hint={t('products.notes.hint')}
          rows={2}
          value={product.notes}
          onKeep={(notes) => keep({ ...product, notes })}
        />
      </Card>
      {product.picture && remembered.settings.pictures !== false && (
        <Disclosure summary={t('products.picture.show')}>
          <KeptPhoto
            world={world}
            photo={product.picture}
            alt={t('products.picture.alt', { name: product.name })}
          />
        </Disclosure>
      )}
      <LabelHistory world={world} product={product} onKeep={keep} />
      <Sources world={world} product={product} />
      <Corrections key={product.id} world={world} product={product} onKeep={keep} />
      <Merge world={world} product={product} />
      <div class="actions">
        <Button look="quiet" label={t('products.remove-what', { name: product.name })} onClick={remove}>
          {t('products.remove')}
        </Button>
        {product.picture && remembered.settings.pictures !== false && (
          <Button look="quiet" onClick={() => void world.change(...dropPicture(product).changes)}>
            {t('products.picture.remove')}
          </Button>
        )}
        {used.length > 0 && <span class="hint">{t('products.remove.used', { n: used.length })}</span>}
      </div>
    </>
  );
}

/** A kept product as one that was met, for what may be done with either. */
function metAgain(product: Product): Met {
  const { pin: _, text, ...facts } = comparedProduct(product);
  return { text, facts };
}

function Sources({ world, product }: { world: World; product: Product }) {
  const { t } = world;
  const grams = gramsAWash(world, product);
  return (
    <Card title={t('products.sources')}>
      {product.sources.length === 0 ? (
        <p class="hint">{t('products.sources.none')}</p>
      ) : (
        <ul class="plain-list sources">
          {product.sources.map((source) => (
            <li key={source.url + (source.variant ?? '')}>
              {/^https?:/.test(source.url) ? (
                <a href={source.url} target="_blank" rel="noreferrer">
                  {shopOf(source.url)}
                </a>
              ) : (
                shopOf(source.url)
              )}
              {source.variant && (
                <span>
                  {'\u00a0· '}
                  {source.variant}
                </span>
              )}
              <span class="hint">
                {dotted([priceWords(t, product, source, grams), dayWords(t, source.seen)])}
              </span>
            </li>
          ))}
        </ul>
      )}
    </Card>
  );
}

type Corrected = { world: World; product: Product; onKeep: (product: Product) => void };

function Corrections({ world: { t }, product, onKeep }: Corrected) {
  const without = (name: 'kind' | 'use' | 'size' | 'maker') => {
    const { [name]: _, ...rest } = product;
    return rest;
  };
  const [size, setSize] = useState(product.size);
  const keepSize = () => {
    if (size !== product.size) onKeep(size === undefined ? without('size') : { ...product, size });
  };
  return (
    <Disclosure summary={t('products.correct')}>
      <KeptText
        label={t('products.name')}
        value={product.name}
        onKeep={(name) => name && onKeep({ ...product, name })}
      />
      <KeptText
        label={t('products.maker')}
        value={product.maker ?? ''}
        onKeep={(maker) => onKeep(maker ? { ...product, maker } : without('maker'))}
      />
      <Select
        label={t('products.kind')}
        empty={t('products.kind.unknown')}
        value={product.kind}
        onChange={(kind) => onKeep(kind ? { ...product, kind, use: usualUse[kind] } : without('kind'))}
        options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
      />
      <Choice<Use | 'unknown'>
        legend={t('products.use')}
        value={product.use ?? 'unknown'}
        onChange={(use) => onKeep(use === 'unknown' ? without('use') : { ...product, use })}
        options={(['unknown', 'leave-on', 'rinse-off'] as const).map((value) => ({
          value,
          label: t(`products.use.${value}`),
        }))}
      />
      <div onFocusOut={keepSize}>
        <NumberField
          lang={t.lang}
          label={t('products.size')}
          unit={product.sizeUnit ?? 'ml'}
          min={0.1}
          max={20_000}
          wrong={t('products.size.wrong', { min: 0.1, max: 20_000 })}
          value={size}
          onNumber={setSize}
        />
      </div>
      <Choice
        legend={t('products.size.unit')}
        value={product.sizeUnit ?? 'ml'}
        onChange={(sizeUnit) => onKeep({ ...product, sizeUnit })}
        options={(['ml', 'g'] as const).map((value) => ({ value, label: value }))}
      />
    </Disclosure>
  );
}

/** Two entries that are one product: likely ones first. */
function Merge({ world, product }: { world: World; product: Product }) {
  const { t, remembered } = world;
  const [other, setOther] = useState<string | undefined>();
  const chosen = remembered.products.find(({ id }) => id === other);
  const others = remembered.products
    .filter(({ id }) => id !== product.id)
    .map((each) => ({
      each,
      likely: isSameProduct(product, { facts: each, text: each.labels[0]?.text ?? '' }),
    }))
    .toSorted((a, b) => Number(b.likely) - Number(a.likely) || (a.each.name < b.each.name ? -1 : 1));
  if (others.length === 0) return null;
  const merge = async () => {
    if (chosen && (await world.act({ act: 'merge', kept: product.id, other: chosen.id })).ok)
      setOther(undefined);
  };
  return (
    <Disclosure summary={t('products.merge')}>
      <Select
        label={t('products.merge')}
        empty={t('products.merge.choose')}
        hint={t('products.merge.hint', { name: product.name })}
        value={other}
        onChange={setOther}
        options={others.map(({ each: { id, name, maker } }) => ({
          value: id,
          label: dotted([name, maker]),
        }))}
      />
      <div class="actions">
        <Button disabled={!chosen} onClick={merge}>
          {t('products.merge.do')}
        </Button>
      </div>
    </Disclosure>
  );
}
