import { hostOf } from '../../use/acts/matters/sites.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Choice } from '../parts/controls/choice.tsx';
import type { World } from '../world.ts';

/** Which sites are read, each with a way back. The browser's own grants are the truth. */
export function ReadingSites({ world }: { world: World }) {
  const { t, reach, remembered } = world;
  const everywhere = reach?.everywhere ?? false;
  const origins = reach?.origins ?? [];
  const paused = remembered.sites.filter((site) => site.paused);
  const taught = remembered.sites.filter(
    (site) => site.notLists.length + site.listsAt.length + (site.kinds?.length ?? 0) > 0,
  );
  const reads = everywhere ? 'everywhere' : 'press';
  const choose = (to: 'everywhere' | 'press') => {
    if (!reach || to === reads) return;
    // Straight from the press: nothing before the browser's own question.
    void (to === 'everywhere' ? reach.allow('everywhere') : reach.withdraw('everywhere')).then(
      async (done) => {
        if (!done) return world.say(t('panel.reach.refused'));
        await world.change({
          do: 'set',
          settings: { reach: to === 'everywhere' ? to : origins.length > 0 ? 'shops' : 'press' },
        });
      },
    );
  };
  return (
    <Card title={t('settings.sites')}>
      {reach && (
        <Choice
          legend={t('settings.sites.which')}
          layout="list"
          options={(['press', 'everywhere'] as const).map((value) => ({
            value,
            label: t(`settings.sites.${value}`),
            hint: t(`settings.sites.${value}.hint`),
          }))}
          value={reads}
          onChange={choose}
        />
      )}
      <Sites
        title={t('settings.sites.allowed')}
        none={t('settings.sites.allowed-none')}
        origins={origins}
        word={t('settings.sites.withdraw')}
        onPress={(origin) =>
          void reach?.withdraw(origin).then((done) => {
            world.say(t(done ? 'settings.sites.withdrawn' : 'panel.reach.refused', { host: hostOf(origin) }));
          })
        }
      />
      <Sites
        title={t('settings.sites.paused')}
        none={t('settings.sites.paused-none')}
        origins={paused.map(({ origin }) => origin)}
        word={t('panel.reach.resume')}
        onPress={(origin) => void world.act({ act: 'resume', url: origin })}
      />
      {taught.length > 0 && (
        <Sites
          title={t('settings.sites.taught')}
          origins={taught.map(({ origin }) => origin)}
          word={t('settings.sites.unlearn')}
          onPress={(origin) => void world.act({ act: 'unlearn', url: origin })}
        />
      )}
    </Card>
  );
}

function Sites(props: {
  title: string;
  none?: string;
  origins: readonly string[];
  word: string;
  onPress: (origin: string) => void;
}) {
  return (
    <div class="stack">
      <h4>{props.title}</h4>
      {props.origins.length === 0 && props.none && <p class="hint">{props.none}</p>}
      <ul class="plain-list">
        {props.origins.map((origin) => (
          <li key={origin} class="with-button">
            <span>{hostOf(origin)}</span>
            <Button
              look="quiet"
              label={`${props.word}: ${hostOf(origin)}`}
              onClick={() => props.onPress(origin)}
            >
              {props.word}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
