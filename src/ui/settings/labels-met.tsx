import { useEffect, useState } from 'preact/hooks';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import type { World } from '../world.ts';

/** Labels met while browsing: how many are remembered, and the button that forgets them. */
export function LabelsMet({ world: { t, labelsMet, say } }: { world: World }) {
  const [count, setCount] = useState<number>();
  const tell = () =>
    labelsMet?.count().then(setCount, () => {
      setCount(undefined);
    });
  useEffect(() => void tell(), []);
  if (!labelsMet || count === undefined) return null;
  const forget = () =>
    labelsMet
      .forget()
      .then(tell)
      .catch(() => say(t('shell.no-background')));
  return (
    <Card title={t('settings.labels-met')}>
      <p>{t('settings.labels-met.what', { n: count })}</p>
      <p class="hint">{t('settings.labels-met.why')}</p>
      <div class="actions">
        <Button disabled={count === 0} onClick={forget}>
          {t('settings.labels-met.forget')}
        </Button>
      </div>
    </Card>
  );
}
