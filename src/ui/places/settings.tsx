import { Backup } from '../keeping/backup.tsx';
import { Cautions } from '../page/cautions.tsx';
import { Columns } from '../parts/columns.tsx';
import { Amounts } from '../settings/amounts.tsx';
import { Forget } from '../settings/forget.tsx';
import { LabelsMet } from '../settings/labels-met.tsx';
import { Looks } from '../settings/looks.tsx';
import { Privacy } from '../settings/privacy.tsx';
import { ProductPictures } from '../settings/product-pictures.tsx';
import { ReadNames } from '../settings/read-names.tsx';
import { ReadingSites } from '../settings/reading-sites.tsx';
import type { World } from '../world.ts';

export function SettingsPlace({ world }: { world: World }) {
  const { t } = world;
  return (
    <>
      <h2>{t('shell.place.settings')}</h2>
      <Columns
        start={
          <>
            <ReadingSites world={world} />
            <Looks world={world} />
            <ProductPictures world={world} />
            <Amounts world={world} />
            <ReadNames world={world} />
            <LabelsMet world={world} />
          </>
        }
        end={
          <>
            <Privacy world={world} />
            <Cautions world={world} />
            <Backup world={world} />
            <Forget world={world} />
          </>
        }
      />
    </>
  );
}
