import { useEffect, useState } from 'preact/hooks';
import type { ReadAs, Reading } from '../../../core/reading/reading.ts';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import type { World } from '../../world.ts';
import { UnknownName } from './unknown-name.tsx';

/**
 * Names nobody could read, each to be read as another or told what it is, and those settled before with a way
 * back. Nothing is ever read by likeness alone.
 */
export function UnknownNames({ world, reading }: { world: World; reading: Reading }) {
  const { t } = world;
  const { readAs } = world.remembered;
  const asPrinted = (raw: string) => Object.hasOwn(readAs, raw) && readAs[raw] === '';
  const unknown = [
    ...new Set(
      reading.mentions.flatMap(({ raw, found }) => (found.how === 'none' && !asPrinted(raw) ? [raw] : [])),
    ),
  ];
  const settled = reading.mentions.flatMap(({ raw, found }) => {
    const said = Object.hasOwn(readAs, raw) ? readAs[raw] : undefined;
    if (asPrinted(raw)) return [{ raw, words: t('panel.mended.left', { printed: raw }) }];
    if (found.how === 'told') return [{ raw, words: t(`panel.told.so.${found.as}`, { printed: raw }) }];
    return found.how !== 'none' && said === found.name
      ? [{ raw, words: t('panel.read-as.so', { printed: raw, name: said }) }]
      : [];
  });
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
  if (unknown.length + settled.length === 0) return null;

  const settle = (printed: string, name: ReadAs[string] | null) =>
    void world.act({ act: 'read-as', printed, name });
  return (
    <Card title={t('panel.unknown.title', { n: unknown.length })}>
      {unknown.length > 0 && (
        <p class="hint">
          {t(nearEnd(reading) ? 'panel.unknown.trace' : 'panel.unknown.matters', { n: unknown.length })}{' '}
          {t('panel.unknown.why')}
        </p>
      )}
      <ul class="plain-list stack">
        {unknown.map((printed) => (
          <UnknownName
            key={printed}
            world={world}
            printed={printed}
            close={close[printed]}
            onSettle={(as) => settle(printed, as)}
          />
        ))}
        {settled.map(({ raw, words }) => (
          <li key={raw} class="unknown">
            <span>{words}</span>
            <Button
              look="quiet"
              label={t('panel.read-as.drop.what', { printed: raw })}
              onClick={() => settle(raw, null)}
            >
              {t('panel.read-as.drop')}
            </Button>
          </li>
        ))}
      </ul>
    </Card>
  );
}

/** Whether every name that is not known stands among those that are at most a trace. */
const nearEnd = ({ mentions, onePercentFrom }: Reading) =>
  onePercentFrom !== undefined &&
  mentions.every(({ found }, index) => found.how !== 'none' || index >= onePercentFrom);
