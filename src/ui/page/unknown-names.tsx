import { useEffect, useState } from 'preact/hooks';
import type { Reading } from '../../core/reading/reading.ts';
import { Button } from '../parts/button.tsx';
import { Card } from '../parts/card.tsx';
import { Pending } from '../parts/pending.tsx';
import type { World } from '../world.ts';

/**
 * Names nobody could read, each with close spellings the reader may accept ("read as"), and those accepted
 * before with a way back. Nothing is ever read by likeness alone.
 */
export function UnknownNames({ world, reading }: { world: World; reading: Reading }) {
  const { t } = world;
  const unknown = [
    ...new Set(reading.mentions.flatMap(({ raw, found }) => (found.how === 'none' ? [raw] : []))),
  ];
  const accepted = reading.mentions.filter(
    ({ raw, found }) => found.how !== 'none' && world.remembered.readAs[raw] === found.name,
  );
  const [close, setClose] = useState<Record<string, string[]>>({});
  const asked = unknown.join('\n');
  useEffect(() => {
    let here = true;
    if (asked)
      void world.close(asked.split('\n')).then((lists) => {
        if (here)
          setClose(Object.fromEntries(asked.split('\n').map((name, index) => [name, lists[index] ?? []])));
      });
    return () => {
      here = false;
    };
  }, [asked]);
  if (unknown.length + accepted.length === 0) return null;

  const readAs = async (printed: string, name: string | null) => {
    const { ok } = await world.change({ do: 'read-as', printed, name });
    if (ok)
      world.say(
        t(name ? 'panel.read-as.done' : 'panel.read-as.dropped', { printed, name: name ?? '' }),
        true,
      );
  };
  return (
    <Card title={t('panel.unknown.title', { n: unknown.length })}>
      {unknown.length > 0 && <p class="hint">{t('panel.unknown.why')}</p>}
      <ul class="plain-list stack">
        {unknown.map((printed) => (
          <li key={printed} class="unknown">
            <span class="unknown-name">{printed}</span>
            {(close[printed] ?? []).length > 0 ? (
              <div class="actions">
                <span class="hint">{t('panel.read-as')}</span>
                {close[printed]?.map((name) => (
                  <Button
                    key={name}
                    label={`${t('panel.read-as')} ${name}: ${printed}`}
                    onClick={() => readAs(printed, name)}
                  >
                    {name}
                  </Button>
                ))}
              </div>
            ) : close[printed] ? (
              <span class="hint">{t('panel.unknown.no-close')}</span>
            ) : (
              <Pending t={t} />
            )}
          </li>
        ))}
        {accepted.map(({ raw, found }) => (
          <li key={raw} class="unknown">
            <span>
              {t('panel.read-as.so', { printed: raw, name: found.how === 'none' ? '' : found.name })}
            </span>
            <Button
              look="quiet"
              label={`${t('panel.read-as.drop')}: ${raw}`}
              onClick={() => readAs(raw, null)}
            >
              {t('panel.read-as.drop')}
            </Button>
          </li>
        ))}
      </ul>
    </Card>
  );
}
