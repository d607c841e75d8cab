import { useState } from 'preact/hooks';
import { type Compared, comparedMet, type Pin, pinKey, pinOf } from '../../use/acts/matters/pins.ts';
import { Paste } from '../page/paste.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';

/** Adds one more product to the comparison: from the page, from those kept, or pasted. */
export function Choose(props: {
  world: World;
  onPage: readonly Compared[];
  taken: readonly Pin[];
  onAdd: (pin: Pin) => void;
}) {
  const { world, onPage, taken, onAdd } = props;
  const { t, remembered } = world;
  const [turn, setTurn] = useState(0);
  const [open, setOpen] = useState(taken.length === 0);
  // A full shelf is put in order only for a user who asks for it.
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
            onChange={(key) => {
              const chosen = options.find(({ value }) => value === key);
              if (chosen) onAdd(chosen.pin);
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
            onAdd(comparedMet({ text, facts: { name, ...(use && { use }) } }).pin);
            setTurn(turn + 1);
          }}
        />
      </Disclosure>
    </div>
  );

  function allOptions() {
    const order = new Intl.Collator(t.lang);
    return [
      ...onPage.map(({ pin, name }) => ({ pin, label: t('compare.from-page', { name }) })),
      ...remembered.products
        .filter(({ labels }) => labels.length > 0)
        .map(({ id, name, maker }) => ({ pin: pinOf(id), label: maker ? `${name} (${maker})` : name }))
        .toSorted((a, b) => order.compare(a.label, b.label)),
    ]
      .map((each) => ({ ...each, value: pinKey(each.pin) }))
      .filter(({ value }) => !taken.some((pin) => pinKey(pin) === value));
  }
}
