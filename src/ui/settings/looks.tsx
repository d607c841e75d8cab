import type { Settings } from '../../store/remembered.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Card } from '../parts/card.tsx';
import { CheckBoxes, Choice } from '../parts/controls/choice.tsx';
import { Select } from '../parts/controls/select.tsx';
import { languages } from '../words/languages.ts';
import type { World } from '../world.ts';

const scale = { small: 0.85, medium: 1, large: 1.4 } as const;

/** Language, units, and how names are marked in the page. */
export function Looks({ world }: { world: World }) {
  const { t } = world;
  const { settings } = world.remembered;
  const set = (changed: Partial<Settings>) => void world.change({ do: 'set', settings: changed });
  return (
    <>
      <Card title={t('settings.words')}>
        <Select
          label={t('settings.language')}
          empty={t('settings.language.browser')}
          options={Object.entries(languages).map(([value, label]) => ({ value, label }))}
          value={settings.language}
          onChange={(language) =>
            language ? set({ language }) : void world.change({ do: 'set', settings: {}, unset: ['language'] })
          }
        />
        <Choice
          legend={t('settings.units')}
          options={(['metric', 'imperial'] as const).map((value) => ({
            value,
            label: t(`settings.units.${value}`),
          }))}
          value={settings.units}
          onChange={(units) => set({ units })}
        />
      </Card>
      <Card title={t('settings.marks')}>
        <CheckBoxes
          legend={t('settings.underline')}
          options={(['protein', 'moisture'] as const).map((value) => ({
            value,
            label: t(`settings.underline.${value}`),
            drawing: <Glyph name={value === 'protein' ? 'small' : 'draws'} ground="var(--raised)" />,
          }))}
          value={(['protein', 'moisture'] as const).filter((each) => settings.underline[each])}
          onChange={(on) =>
            set({ underline: { protein: on.includes('protein'), moisture: on.includes('moisture') } })
          }
        />
        <Choice
          legend={t('settings.glyphs')}
          options={(['small', 'medium', 'large'] as const).map((value) => ({
            value,
            label: t(`settings.glyphs.${value}`),
            drawing: <Glyph name="large" size={scale[value]} ground="var(--raised)" />,
          }))}
          value={settings.glyphSize}
          onChange={(glyphSize) => set({ glyphSize })}
        />
      </Card>
    </>
  );
}
