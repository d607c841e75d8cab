import { bringsFor } from '../../core/amounts/brings.ts';
import type { Product } from '../../core/product/product.ts';
import { glyphsOf } from '../describe/mark.ts';
import { sumsOf } from '../describe/strip.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Pending } from '../parts/pending.tsx';
import type { World } from '../world.ts';
import { bestSource, per100Words, priceWords, sizeWords } from './price.ts';

/** Maker, kind, size and price in one line, as far as they are known. */
export function factsOf(world: World, product: Product): string {
  const { t } = world;
  const source = bestSource(product);
  return [
    product.maker,
    product.kind && t(`routine.kind.${product.kind}`),
    sizeWords(t, product),
    // A price alone says little of a row of sizes; the shops are told apart when the product is opened.
    source && (per100Words(t, product, source) ?? priceWords(t, product, source)),
  ]
    .filter(Boolean)
    .join(' · ');
}

/** One product in the list: pressed, it opens. */
export function ProductRow(props: { world: World; product: Product; onOpen: (id: string) => void }) {
  const { world, product, onOpen } = props;
  const { t } = world;
  const [label] = product.labels;
  const reading = label && world.reading(label.text, product);
  const glyphs = reading ? [...new Set(reading.mentions.flatMap(glyphsOf))] : [];
  return (
    <article class={product.owned ? 'product owned' : 'product'}>
      <button type="button" class="product-name" onClick={() => onOpen(product.id)}>
        {product.name}
      </button>
      <span class="product-state">{t(product.owned ? 'products.owned' : 'products.considered')}</span>
      <span class="hint product-facts">{factsOf(world, product)}</span>
      <span class="product-sums">
        {glyphs.map((name) => (
          <Glyph key={name} name={name} ground="var(--raised)" />
        ))}
        <span class="hint">
          {!label ? (
            t('products.no-label')
          ) : reading ? (
            sumsOf(reading, t, bringsFor(reading, product, world.practice.washDay))
          ) : (
            <Pending t={t} />
          )}
          {product.labels.length > 1 && ` · ${t('products.changed-lately')}`}
        </span>
      </span>
    </article>
  );
}
