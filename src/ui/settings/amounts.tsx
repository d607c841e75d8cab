import { Card } from '../parts/card.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import type { World } from '../world.ts';

/** What amounts are reckoned by: whose ceilings hold, and how much of a rinse-off stays. */
export function Amounts({ world }: { world: World }) {
  const { t, practice } = world;
  const { settings } = world.remembered;
  const stays = Math.round(practice.washDay.exposure.conditioner.retention * 100);
  const offered = [...new Set([5, 10, 20, stays])].toSorted((a, b) => a - b);
  return (
    <Card title={t('settings.amounts')}>
      <Choice
        legend={t('settings.market')}
        options={(['page', 'eu', 'other'] as const).map((value) => ({
          value,
          label: t(`settings.market.${value}`),
        }))}
        value={settings.market ?? 'page'}
        onChange={(market) =>
          void world.change(
            market === 'page'
              ? { do: 'set', settings: {}, unset: ['market'] }
              : { do: 'set', settings: { market } },
          )
        }
      />
      <Choice
        legend={t('settings.stays')}
        options={offered.map((percent) => ({
          value: String(percent),
          label: t('settings.stays.of', { percent }),
        }))}
        value={String(stays)}
        onChange={(percent) =>
          void world.change({ do: 'set', settings: { rinseOffStays: Number(percent) / 100 } })
        }
      />
      <Choice
        legend={t('settings.sizes')}
        options={(['between', 'practice', 'measured'] as const).map((value) => ({
          value,
          label: t(`settings.sizes.${value}`),
        }))}
        value={settings.sizesBy ?? 'between'}
        onChange={(sizesBy) =>
          void world.change(
            sizesBy === 'between'
              ? { do: 'set', settings: {}, unset: ['sizesBy'] }
              : { do: 'set', settings: { sizesBy } },
          )
        }
      />
    </Card>
  );
}
