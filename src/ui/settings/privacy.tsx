import { Card } from '../parts/card.tsx';
import type { World } from '../world.ts';

const said = ['kept', 'where', 'sent', 'pages', 'permissions'] as const;

/** What is kept, where, and that nothing is sent: the same statement as the README's. */
export function Privacy({ world: { t } }: { world: World }) {
  return (
    <Card title={t('settings.privacy')}>
      {said.map((each) => (
        <p key={each}>{t(`settings.privacy.${each}`)}</p>
      ))}
    </Card>
  );
}
