import { useEffect, useState } from 'preact/hooks';
import type { ReadFor } from '../../../core/product/read-as.ts';
import { Button } from '../../parts/controls/button.tsx';
import type { World } from '../../world.ts';

/** How much of a typed list is known; what is not, with names spelled nearly so. Nothing is put right by itself. */
export function TypedReading(props: {
  world: World;
  text: string;
  as: ReadFor;
  onInput: (text: string) => void;
}) {
  const { world, text } = props;
  const { t } = world;
  // What is typed last is still being typed.
  const whole = text.slice(0, Math.max(...[',', ';', '\n'].map((each) => text.lastIndexOf(each))) + 1);
  const reading = whole.trim() ? world.reading(whole, props.as) : undefined;
  const unsure = (reading?.mentions ?? []).filter(
    ({ found }) => found.how === 'none' || found.how === 'mended',
  );
  const asked = [...new Set(unsure.map(({ raw }) => raw))].join('\n');
  const [close, setClose] = useState<Record<string, string[]>>({});
  useEffect(() => {
    let here = true;
    const names = asked ? asked.split('\n') : [];
    if (names.length > 0)
      void world.close(names).then((lists) => {
        if (here) setClose(Object.fromEntries(names.map((name, index) => [name, lists[index] ?? []])));
      });
    return () => {
      here = false;
    };
  }, [asked]);
  if (!reading || reading.refused) return null;
  const { mentions } = reading;
  return (
    <div class="stack">
      <p class="hint" role="status">
        {t('products.typed.read', {
          n: mentions.length,
          known: mentions.filter(({ found }) => found.how !== 'none' && found.how !== 'mended').length,
        })}
      </p>
      {unsure.map(({ raw, from, to, found }) => {
        const names = found.how === 'mended' ? [found.name] : (close[raw] ?? []);
        return (
          <div key={from} class="actions">
            <span>
              {t(names.length > 0 ? 'products.typed.near' : 'products.typed.unknown', { typed: raw })}
            </span>
            {names.slice(0, 3).map((name) => (
              <Button
                key={name}
                label={t('products.typed.take', { name })}
                onClick={() => props.onInput(text.slice(0, from) + name + text.slice(to))}
              >
                {name}
              </Button>
            ))}
          </div>
        );
      })}
    </div>
  );
}
