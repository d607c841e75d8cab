import { useState } from 'preact/hooks';
import { bringsFor } from '../../../core/amounts/brings.ts';
import type { Said } from '../../../core/judge/finding.ts';
import type { LabelText, Product } from '../../../core/product/product.ts';
import { plainLabel } from '../../../core/product/same-product.ts';
import { sumsOf } from '../../describe/sums.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { TextField } from '../../parts/controls/field.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import type { World } from '../../world.ts';
import { dayWords, shopOf } from '../price.ts';
import { LabelChange } from './label-change.tsx';

const seen = ({ t }: World, { url, seen: when }: LabelText) =>
  url
    ? t('products.label.seen-at', { date: dayWords(t, when), shop: shopOf(url) })
    : t('products.label.typed', { date: dayWords(t, when) });

type Props = { world: World; product: Product; onKeep: (product: Product, say?: Said) => void };

/** The newest label with its reading, what changed from the one before, and every earlier one. */
export function LabelHistory(props: Props) {
  const { world, product, onKeep } = props;
  const { t } = world;
  const [now, before] = product.labels;
  const reading = now && world.reading(now.text, product);
  return (
    <Card title={t('products.label.now')}>
      {now ? (
        <>
          <p class="hint">{seen(world, now)}</p>
          {reading && <p>{sumsOf(reading, t, bringsFor(reading, product, world.practice.washDay))}</p>}
          <p class="label-text">{now.text}</p>
        </>
      ) : (
        <p>{t('products.no-label')}</p>
      )}
      {now && before && (
        <section class="stack">
          <h4>{t('products.change.since', { date: dayWords(t, before.seen) })}</h4>
          <LabelChange world={world} before={before.text} after={now.text} as={product} />
        </section>
      )}
      {before && (
        <Disclosure summary={t('products.label.earlier', { n: product.labels.length - 1 })}>
          {product.labels.slice(1).map((label, i) => {
            const older = product.labels[i + 2];
            return (
              <section class="stack earlier" key={label.seen + label.text}>
                <p class="hint">{seen(world, label)}</p>
                <p class="label-text">{label.text}</p>
                {older && <LabelChange world={world} before={older.text} after={label.text} as={product} />}
              </section>
            );
          })}
        </Disclosure>
      )}
      <NewLabel world={world} product={product} onKeep={onKeep} />
    </Card>
  );
}

function NewLabel(props: Props) {
  const { world, product, onKeep } = props;
  const { t } = world;
  const [text, setText] = useState('');
  const [error, setError] = useState<string | undefined>();
  const first = product.labels.length === 0;
  const add = (event: Event) => {
    event.preventDefault();
    const written = text.trim();
    if (!written) return;
    if (product.labels[0] && plainLabel(product.labels[0].text) === plainLabel(written))
      return setError(t('products.label.same'));
    const labels = product.labels.filter((label) => plainLabel(label.text) !== plainLabel(written));
    const label = { text: written, seen: world.now?.() ?? world.today };
    onKeep({ ...product, labels: [label, ...labels] }, first ? undefined : { key: 'products.label.added' });
    setText('');
  };
  return (
    <Disclosure summary={t(first ? 'products.label.add' : 'products.label.new')} open={first}>
      <form class="stack" onSubmit={add}>
        <TextField
          label={t(first ? 'products.label' : 'products.label.new.field')}
          hint={t('products.label.hint')}
          rows={4}
          value={text}
          error={error}
          onInput={(value) => {
            setText(value);
            setError(undefined);
          }}
        />
        <div class="actions">
          <Button submit>{t('products.save')}</Button>
        </div>
      </form>
    </Disclosure>
  );
}
