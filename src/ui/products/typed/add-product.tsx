import { useState } from 'preact/hooks';
import { type ProductFacts, type ProductKind, productKinds } from '../../../core/product/product.ts';
import { metOnPage } from '../../../use/judge/met-product.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { CheckBox } from '../../parts/controls/choice.tsx';
import { TextField } from '../../parts/controls/field.tsx';
import { Select } from '../../parts/controls/select.tsx';
import type { World } from '../../world.ts';
import { keepAnd } from '../keep-and.ts';
import { TypedList } from './typed-list.tsx';
import { TypedReading } from './typed-reading.tsx';

const longest = 40_000; // as long as a text may be to be read at all

/** Adds a product: from the page in view, or by hand with its label typed or pasted. */
export function AddProduct(props: { world: World; onDone: (id: string | undefined) => void }) {
  const { world, onDone } = props;
  const { t, page } = world;
  const [name, setName] = useState('');
  const [maker, setMaker] = useState('');
  const [kind, setKind] = useState<ProductKind | undefined>();
  const [text, setText] = useState('');
  const [owned, setOwned] = useState(true);
  const [tried, setTried] = useState(false);
  const tooLong = text.length > longest;

  const submit = async (event: Event) => {
    event.preventDefault();
    setTried(true);
    if (!name.trim()) (event.currentTarget as HTMLElement).querySelector('input')?.focus();
    if (!name.trim() || tooLong) return;
    const facts: ProductFacts = {
      name: name.trim(),
      ...(maker.trim() && { maker: maker.trim() }),
      ...(kind && { kind }),
    };
    const id = await keepAnd(world, { facts, text: text.trim() }, owned);
    if (id) onDone(id);
  };
  return (
    <>
      {page && page.lists.length > 0 && (
        <Card title={t('products.new.from-page')}>
          <ul class="plain-list from-page">
            {page.lists.map((list) => {
              const met = metOnPage(list, page);
              const { facts } = met;
              return (
                <li key={`${list.frame} ${list.id}`}>
                  <span>{facts.name}</span>
                  <Button
                    label={t('products.new.keep-what', { name: facts.name })}
                    onClick={async () => onDone(await keepAnd(world, met))}
                  >
                    {t('products.new.keep')}
                  </Button>
                </li>
              );
            })}
          </ul>
        </Card>
      )}
      <Card title={t('products.new.title')} id="new-product">
        <form class="stack" onSubmit={submit}>
          <TextField
            label={t('products.name')}
            value={name}
            onInput={setName}
            error={tried && !name.trim() ? t('products.name.missing') : undefined}
          />
          <TextField label={t('products.maker')} value={maker} onInput={setMaker} />
          <Select
            label={t('products.kind')}
            empty={t('products.kind.unknown')}
            value={kind}
            onChange={setKind}
            options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
          />
          <TypedList
            world={world}
            value={text}
            onInput={setText}
            error={tooLong ? t('products.label.too-long') : undefined}
          />
          {!tooLong && <TypedReading world={world} text={text} as={{ kind }} onInput={setText} />}
          <CheckBox label={t('products.is-owned')} checked={owned} onChange={setOwned} />
          <div class="actions">
            <Button submit look="strong">
              {t('products.save')}
            </Button>
            <Button onClick={() => onDone(undefined)}>{t('products.not-now')}</Button>
          </div>
        </form>
      </Card>
    </>
  );
}
