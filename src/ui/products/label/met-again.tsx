import type { Product, ProductFacts } from '../../../core/product/product.ts';
import { keepMet } from '../../../core/product/same-product.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import type { World } from '../../world.ts';
import { dayWords } from '../price.ts';
import { LabelChange } from './label-change.tsx';
import '../products.css';

/** A kept product met again with another label: what changed, and a press that keeps both. Else nothing. */
export function MetAgain(props: { world: World; kept: Product; text: string; facts: ProductFacts }) {
  const { world, kept, text, facts } = props;
  const { t } = world;
  const [label] = kept.labels;
  const now = world.now?.() ?? world.today;
  if (!label || keepMet([kept], { facts, text, now }, kept.id).happened !== 'label-changed') return null;
  return (
    <Card
      over={t('products.change.since', { date: dayWords(t, label.seen) })}
      title={t('products.change.met')}
    >
      <LabelChange world={world} before={label.text} after={text} as={kept} />
      <div class="actions">
        <Button onClick={() => void world.act({ act: 'keep', met: { facts, text }, id: kept.id })}>
          {t('products.change.keep')}
        </Button>
      </div>
    </Card>
  );
}
