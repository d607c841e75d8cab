import { Card } from '../parts/card.tsx';
import type { World } from '../world.ts';

const said = ['kept', 'where', 'sent', 'shelf', 'pages', 'permissions'] as const;

/** What is kept, where, and what one press asks of a shop: the same statement as the README's. */
export function Privacy({ world: { t } }: { world: World }) {
  return (
    <Card title={t('settings.privacy')}>
      {said.map((each) => (
        <p key={each}>{t(`settings.privacy.${each}`)}</p>
      ))}
    </Card>
  );
}
