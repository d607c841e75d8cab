import { useState } from 'preact/hooks';
import { Paste } from '../page/paste.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Select } from '../parts/select.tsx';
import type { World } from '../world.ts';
import { type Compared, comparedOf } from './pinned.ts';

/** Adds one more product to the comparison: from the page, from those kept, or pasted. */
export function Choose(props: {
  world: World;
  onPage: readonly Compared[];
  taken: readonly string[];
  onAdd: (product: Compared | { pin: string }) => void;
}) {
  const { world, onPage, taken, onAdd } = props;
  const { t, remembered } = world;
  const [turn, setTurn] = useState(0);
  const options = [
    ...onPage.map(({ pin, name }) => ({ value: pin, label: t('compare.from-page', { name }) })),
    ...remembered.products
      .filter(({ labels }) => labels.length > 0)
      .map(({ id, name, maker }) => ({ value: id, label: maker ? `${name} (${maker})` : name }))
      .toSorted((a, b) => a.label.localeCompare(b.label, t.lang)),
  ].filter(({ value }) => !taken.includes(value));
  return (
    <div class="stack">
      {options.length > 0 && (
        <Select
          key={turn}
          label={t('compare.add')}
          empty={t('compare.choose')}
          options={options}
          value={undefined}
          onChange={(pin) => {
            if (pin) onAdd({ pin });
            setTurn(turn + 1);
          }}
        />
      )}
      <Disclosure key={`paste-${turn}`} summary={t('panel.paste.title')}>
        <Paste
          world={world}
          word={t('compare.add-pasted')}
          onRead={({ name, text, use }) => {
            onAdd(comparedOf(text, { name, ...(use && { use }) }));
            setTurn(turn + 1);
          }}
        />
      </Disclosure>
    </div>
  );
}
