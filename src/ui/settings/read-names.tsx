import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import type { World } from '../world.ts';

/** Names the user had read as others, each with a way back. */
export function ReadNames({ world }: { world: World }) {
  const { t } = world;
  const names = Object.entries(world.remembered.readAs);
  if (names.length === 0) return null;
  return (
    <Card title={t('settings.read-as')}>
      <ul class="plain-list">
        {names.map(([printed, name]) => (
          <li key={printed} class="with-button">
            <span>
              {name === ''
                ? t('panel.mended.left', { printed })
                : typeof name === 'string'
                  ? t('settings.read-as.row', { printed, name })
                  : t(`panel.told.so.${name.as}`, { printed })}
            </span>
            <Button
              look="quiet"
              label={t('panel.read-as.drop.what', { printed })}
              onClick={() => void world.act({ act: 'read-as', printed, name: null })}
            >
              {t('panel.read-as.drop')}
            </Button>
          </li>
        ))}
      </ul>
    </Card>
  );
}
