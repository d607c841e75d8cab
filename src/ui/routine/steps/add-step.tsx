import { useState } from 'preact/hooks';
import { type ProductKind, productKinds } from '../../../core/product/product.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Select } from '../../parts/controls/select.tsx';
import type { Translate } from '../../words/index.ts';

/** Adds an empty step of a kind, at its usual place. */
export function AddStep({ t, onAdd }: { t: Translate; onAdd: (kind: ProductKind) => void }) {
  const [kind, setKind] = useState<ProductKind>('leave-in');
  return (
    <div class="add-step">
      <Select
        label={t('routine.step.add')}
        options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
        value={kind}
        onChange={(value) => value && setKind(value)}
      />
      <Button onClick={() => onAdd(kind)}>{t('routine.step.add.do')}</Button>
    </div>
  );
}
