import { bringsFor } from '../../core/amounts/brings.ts';
import { bestSource, type Product } from '../../core/product/product.ts';
import { gramsAWash } from '../../use/grams-a-wash.ts';
import { dotted } from '../describe/dotted.ts';
import { glyphsInOrder } from '../describe/mark.ts';
import { sumsOf } from '../describe/sums.ts';
import { notForHairWords, titleOf } from '../describe/verdict.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { AnswerHead } from '../parts/answer-head.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import type { World } from '../world.ts';
import { amountPriceWords, priceWords, sizeWords } from './price.ts';
import { Thumbnail } from './thumbnail.tsx';
import { useJudged } from './use-judged.ts';

/** Maker, kind, size and price in one line, as far as they are known. */
export function factWords(world: World, product: Product): string {
  const { t } = world;
  const source = bestSource(product);
  return dotted([
    product.maker,
    product.kind && t(`routine.kind.${product.kind}`),
    sizeWords(t, product),
    // A price alone says little of a row of sizes; the shops are told apart when the product is opened.
    source &&
      (amountPriceWords(t, product, source, gramsAWash(world, product)) ?? priceWords(t, product, source)),
  ]);
}

/** One product in the list: its name, whether it fits, what it is and holds; pressed, it opens. */
export function ProductRow(props: {
  world: World;
  product: Product;
  /** Rows have room for a picture. */
  pictured: boolean;
  onOpen: (id: string) => void;
}) {
  const { world, product, pictured, onOpen } = props;
  const { t } = world;
  const [label] = product.labels;
  const { held } = useJudged(world, product);
  const { reading, notForHair, checks: [check] = [] } = held ?? {};
  const { kind, use, id } = product;
  return (
    <article
      class={`product${product.owned ? ' owned' : ''}${pictured ? ' pictured' : ''}`}
      id={`product-${id}`}
    >
      {pictured && <Thumbnail world={world} product={product} always />}
      <button type="button" class="product-name" onClick={() => onOpen(id)}>
        {product.name}
      </button>
      <span class="product-state">{t(product.owned ? 'products.owned' : 'products.considered')}</span>
      {check && <AnswerHead answer={check.answer} title={titleOf(check, t)} look="row" />}
      {notForHair && (
        <AnswerHead answer={notForHairWords(t).answer} title={notForHairWords(t).title} look="row" />
      )}
      <span class="product-sums">
        {reading && (
          <span class="glyphs">
            {glyphsInOrder(reading.mentions).map((name) => (
              <Glyph key={name} name={name} ground="var(--paper)" />
            ))}
          </span>
        )}
        <span>
          {!label ? (
            t('products.no-label')
          ) : reading ? (
            sumsOf(reading, t, bringsFor(reading, { kind, use }, world.practice.washDay))
          ) : (
            <Pending world={world} />
          )}
          {product.labels.length > 1 && `\u00a0· ${t('products.changed-lately')}`}
        </span>
      </span>
      <span class="hint product-facts">{factWords(world, product)}</span>
    </article>
  );
}
