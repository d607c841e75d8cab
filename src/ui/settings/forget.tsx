import { useState } from 'preact/hooks';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBox } from '../parts/controls/choice.tsx';
import type { World } from '../world.ts';

/** Forgets everything, after a second yes. Nothing can take it back, and it says so. */
export function Forget({ world }: { world: World }) {
  const { t } = world;
  const { heads, products, routines, log } = world.remembered;
  const [sure, setSure] = useState(false);
  if (!world.forget) return null;
  const forget = async () => {
    setSure(false);
    world.say(t((await world.forget?.()) ? 'settings.forgotten' : 'shell.no-background'));
  };
  return (
    <Card title={t('settings.forget')}>
      <p>
        {t('settings.forget.what', {
          heads: t('settings.forget.heads', { n: heads.length }),
          products: t('settings.forget.products', { n: products.length }),
          routines: t('settings.forget.routines', { n: routines.length }),
          log: t('settings.forget.log', { n: log.length }),
        })}
      </p>
      <CheckBox label={t('settings.forget.sure')} checked={sure} onChange={setSure} />
      <div class="actions">
        <Button disabled={!sure} onClick={forget}>
          {t('settings.forget.do')}
        </Button>
      </div>
    </Card>
  );
}
