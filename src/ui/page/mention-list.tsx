import { useState } from 'preact/hooks';
import type { Reading } from '../../core/reading/reading.ts';
import { glyphsOf } from '../describe/mark.ts';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import { Help } from '../parts/help.tsx';
import type { World } from '../world.ts';
import { MentionRow } from './mention-row.tsx';

type Which = 'telling' | 'all' | 'unknown';

/** The names of a label in its order: those of protein and moisture, all, or the unknown ones. */
export function MentionList(props: { world: World; reading: Reading; decides: readonly number[] }) {
  const { world, reading } = props;
  const { t } = world;
  const [which, setWhich] = useState<Which>('telling');
  const indexes = reading.mentions.map((_, index) => index);
  const sets: Record<Which, number[]> = {
    telling: indexes.filter((index) => glyphsOf(reading.mentions[index]!).length > 0),
    all: indexes,
    unknown: indexes.filter((index) => reading.mentions[index]!.found.how === 'none'),
  };
  const shown = sets[which].length > 0 || which === 'all' ? which : 'all';
  const line = reading.onePercentFrom;
  const firstAfter = sets[shown].find((index) => line !== undefined && index >= line);
  return (
    <section class="stack" aria-label={t('panel.names')}>
      <Choice
        legend={t('panel.names')}
        help={<Help t={t} term="share" />}
        options={(Object.keys(sets) as Which[])
          .filter((each) => sets[each].length > 0)
          .map((each) => ({ value: each, label: t(`panel.names.${each}`, { n: sets[each].length }) }))}
        value={shown}
        onChange={setWhich}
      />
      {reading.order === 'uninformative' && <p class="hint">{t('page.share.no-order')}</p>}
      <ol class="mentions plain-list">
        {sets[shown].map((index) => (
          <li key={index}>
            {index === firstAfter && index > 0 && (
              <p class="one-percent">
                {t('panel.one-percent')}
                {'\u00a0'}
                <Help t={t} term="one-percent-line" />
              </p>
            )}
            <MentionRow
              world={world}
              reading={reading}
              index={index}
              marked={props.decides.includes(index)}
            />
          </li>
        ))}
      </ol>
      {reading.market && (
        <p class="hint">
          {t(`panel.market.${reading.market}`)} {reading.assumesLimits && t('panel.limits')}{' '}
          <Button look="quiet" onClick={() => world.go('settings')}>
            {t('panel.market.change')}
          </Button>
        </p>
      )}
    </section>
  );
}
