import { useEffect, useState } from 'preact/hooks';
import { type Product, type ProductKind, productKinds } from '../../core/product/product.ts';
import { headInUse } from '../../use/in-use.ts';
import { isJudged, judgeKept } from '../../use/judge/judge-met.ts';
import { RemovedLately } from '../keeping/removed-lately.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Empty } from '../parts/empty.tsx';
import { useFocusOn } from '../parts/focus/focus-on.ts';
import { Pending } from '../parts/waiting/pending.tsx';
import { WindowList } from '../parts/waiting/window-list.tsx';
import { per100 } from '../products/price.ts';
import { ProductDetail } from '../products/product-detail.tsx';
import { ProductRow } from '../products/product-row.tsx';
import { AddProduct } from '../products/typed/add-product.tsx';
import '../products/products.css';
import { hasPictures } from '../products/thumbnail.tsx';
import { useFound } from '../products/use-found.ts';
import { useJudgedAll } from '../products/use-judged.ts';
import { useOpened } from '../products/use-opened.ts';
import { WishNote, wished, wishFrom } from '../routine/plan/wish-filter.tsx';
import type { World } from '../world.ts';

type Show = 'all' | 'owned' | 'considered';
type Sort = 'newest' | 'name' | 'price';
/** Only those that fit the head in use, or a wash day of theirs. */
type Fits = 'head' | 'routine';

// Fewer than this are seen at a glance.
const manyFrom = 8;

const sorts: Sort[] = ['newest', 'name', 'price'];

function sorted(products: readonly Product[], sort: Sort, lang: string): Product[] {
  if (sort === 'name') {
    const { compare } = new Intl.Collator(lang, { numeric: true });
    return products.toSorted((a, b) => compare(a.name, b.name));
  }
  if (sort === 'newest') return products.toReversed(); // they are remembered as they were added
  const price = new Map(products.map((product) => [product, per100(product)]));
  return products.toSorted((a, b) => price.get(a)! - price.get(b)! || 0);
}

/** Whether nothing speaks against a product; what could not be read or told is left out. */
function isFit(world: World, product: Product, fits: Fits): boolean {
  const held = isJudged(world, product) ? judgeKept(world, product) : undefined;
  const check = held?.checks.find(({ about }) => about === fits);
  return check !== undefined && (check.answer === 'suits' || check.answer === 'with-care');
}

/** Products on hand and considered: search, add, and one of them opened. It may be opened for one of them. */
export function ProductsPlace({ world }: { world: World }) {
  const { t, remembered, detail } = world;
  const { products } = remembered;
  const asked = detail && 'product' in detail ? detail.product : undefined;
  const [opened, setOpened] = useState<string | undefined>(asked);
  const [adding, setAdding] = useState(Boolean(detail && 'begin' in detail));
  useEffect(() => {
    if (asked) setOpened(asked);
  }, [asked]);
  const { closed, openRow } = useOpened(opened, setOpened);
  useFocusOn(adding, '#new-product h3');
  const [query, setQuery] = useState('');
  const [show, setShow] = useState<Show>('all');
  const [kind, setKind] = useState<ProductKind | undefined>();
  const [sort, setSort] = useState<Sort>('newest');
  const [fits, setFits] = useState<Fits | undefined>();
  const head = headInUse(remembered);
  const chosen = [show !== 'all', kind, sort !== 'newest', fits].filter(Boolean).length;
  const searched = useFound(products, t, query);
  const judging = useJudgedAll(world, fits && products);
  const open = products.find(({ id }) => id === opened);
  const owned = products.filter((product) => product.owned).length;

  if (open)
    return (
      <>
        <h2>{t('shell.place.products')}</h2>
        <ProductDetail
          key={open.id}
          world={world}
          product={open}
          onClose={() => (world.from ? world.go(world.from) : setOpened(undefined))}
        />
      </>
    );
  if (adding || products.length === 0)
    return (
      <>
        <h2>{t('shell.place.products')}</h2>
        {adding ? (
          <AddProduct
            world={world}
            onDone={(id) => {
              setAdding(false);
              setOpened(id);
            }}
          />
        ) : (
          <Empty
            title={t('products.empty')}
            actions={
              <Button look="strong" onClick={() => setAdding(true)}>
                {t('products.add')}
              </Button>
            }
          >
            <p>{t('products.empty.what')}</p>
          </Empty>
        )}
        <RemovedLately world={world} thing="products" />
      </>
    );
  const pictured = hasPictures(world);
  const wish = wishFrom(world);
  const among = wish ? wished(world, searched, wish) : searched;
  const matching = among.filter(
    (product) =>
      (show === 'all' || product.owned === (show === 'owned')) &&
      (!kind || product.kind === kind) &&
      (!fits || isFit(world, product, fits)),
  );
  // What is searched for comes best match first.
  const found = query.trim() ? matching : sorted(matching, sort, t.lang);
  return (
    <>
      <h2>{t('shell.place.products')}</h2>
      <div class="actions">
        <Button look="strong" onClick={() => setAdding(true)}>
          {t('products.add')}
        </Button>
      </div>
      {wish && <WishNote world={world} wish={wish} />}
      {products.length >= manyFrom && (
        <TextField
          type="search"
          label={t('products.search')}
          hint={t('products.search.hint')}
          value={query}
          onInput={setQuery}
        />
      )}
      {products.length >= manyFrom && (
        <Disclosure summary={t('products.filters', { n: chosen })}>
          <Choice
            legend={t('products.show')}
            value={show}
            onChange={setShow}
            options={[
              { value: 'all', label: t('products.show.all', { n: products.length }) },
              { value: 'owned', label: t('products.show.owned', { n: owned }) },
              { value: 'considered', label: t('products.show.considered', { n: products.length - owned }) },
            ]}
          />
          <Select
            label={t('products.kind')}
            empty={t('products.kind.any')}
            value={kind}
            onChange={setKind}
            options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
          />
          {!query.trim() && (
            <Select
              label={t('products.sort')}
              value={sort}
              onChange={(chosen) => setSort(chosen ?? 'newest')}
              options={sorts.map((value) => ({
                value,
                label: t(`products.sort.${value}`),
              }))}
            />
          )}
          {head && (
            <Select
              label={t('products.fits')}
              empty={t('products.fits.any')}
              value={fits}
              onChange={setFits}
              options={(['head', 'routine'] as const).map((value) => ({
                value,
                label: t(`products.fits.${value}`, { who: head.name }),
              }))}
            />
          )}
        </Disclosure>
      )}
      <p class="hint" role="status">
        {judging ? (
          <Pending world={world} />
        ) : found.length === 0 ? (
          t('products.none-found')
        ) : (
          t('products.found', { n: found.length })
        )}
      </p>
      <WindowList
        key={`${query}|${show}|${kind}|${sort}|${fits}`}
        items={found}
        keyOf={({ id }) => id}
        label={t('products.list')}
        estimate={128}
        near={closed}
      >
        {(product) => <ProductRow world={world} product={product} pictured={pictured} onOpen={openRow} />}
      </WindowList>
      <RemovedLately world={world} thing="products" />
    </>
  );
}
