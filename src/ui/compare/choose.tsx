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
  const [open, setOpen] = useState(taken.length === 0);
  // A full shelf is put in order only for a reader who asks for it.
  const options = open ? allOptions() : [];
  return (
    <div class="stack">
      {(onPage.length > 0 || remembered.products.length > 0) && (
        <Disclosure summary={t('compare.add')} open={open} onToggle={setOpen}>
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
        </Disclosure>
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

  function allOptions() {
    const order = new Intl.Collator(t.lang);
    return [
      ...onPage.map(({ pin, name }) => ({ value: pin, label: t('compare.from-page', { name }) })),
      ...remembered.products
        .filter(({ labels }) => labels.length > 0)
        .map(({ id, name, maker }) => ({ value: id, label: maker ? `${name} (${maker})` : name }))
        .toSorted((a, b) => order.compare(a.label, b.label)),
    ].filter(({ value }) => !taken.includes(value));
  }
}
