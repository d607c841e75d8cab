import { Card } from '../parts/card.tsx';
import { CheckBox } from '../parts/controls/choice.tsx';
import type { World } from '../world.ts';

/** Whether products that are kept get a small picture of their page. */
export function ProductPictures({ world }: { world: World }) {
  const { t } = world;
  return (
    <Card title={t('settings.pictures')}>
      <CheckBox
        label={t('settings.pictures.keep')}
        hint={t('settings.pictures.how')}
        checked={world.remembered.settings.pictures !== false}
        onChange={(pictures) => void world.change({ do: 'set', settings: { pictures } })}
      />
    </Card>
  );
}
