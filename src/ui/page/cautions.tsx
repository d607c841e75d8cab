import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';

const said = ['patch', 'reaction', 'allergy', 'children', 'scalp', 'stylist', 'label'] as const;

/** The usual cautions, once, in plain words. */
export function Cautions({ world: { t } }: { world: World }) {
  return (
    <Disclosure summary={t('panel.care.title')}>
      <ul class="cautions">
        {said.map((each) => (
          <li key={each}>{t(`panel.care.${each}`)}</li>
        ))}
      </ul>
    </Disclosure>
  );
}
