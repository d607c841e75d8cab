import { hostOf } from '../../use/acts/matters/sites.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import type { World } from '../world.ts';

/** Which pages are read, for the shop in view: allow here, allow everywhere, pause. */
export function ReachCard({ world }: { world: World }) {
  const { t, reach, remembered } = world;
  const origin = reach?.origin;
  if (!reach || !origin) return null;
  const host = hostOf(origin);
  const site = remembered.sites.find((each) => each.origin === origin);
  const paused = site?.paused ?? false;
  const allow = (what: 'here' | 'everywhere') => () =>
    // The browser's own question must come straight from the press: nothing before it.
    void reach.allow(what).then(async (granted) => {
      world.say(t(granted ? `panel.reach.allowed.${what}` : 'panel.reach.refused', { host }));
      if (granted && (what === 'everywhere' || remembered.settings.reach === 'press'))
        await world.change({ do: 'set', settings: { reach: what === 'everywhere' ? what : 'shops' } });
    });
  const pause = async () => {
    const { ok } = await world.act({ act: paused ? 'resume' : 'pause', url: origin });
    // Where the site is read on a press only, this is the press.
    if (ok && paused && !reach.here && !(await reach.readNow())) world.say(t('panel.none.not-let'));
  };
  const state = paused ? 'paused' : reach.everywhere ? 'everywhere' : reach.here ? 'here' : 'press';
  return (
    <Card title={t('panel.reach.title')} id="reach">
      <p>{t(`panel.reach.state.${state}`, { host })}</p>
      <div class="actions">
        {!reach.here && !paused && <Button onClick={allow('here')}>{t('panel.reach.here')}</Button>}
        {!reach.everywhere && !paused && (
          <Button onClick={allow('everywhere')}>{t('panel.reach.everywhere')}</Button>
        )}
        {(reach.here || paused) && (
          <Button onClick={pause}>{t(paused ? 'panel.reach.resume' : 'panel.reach.pause')}</Button>
        )}
      </div>
    </Card>
  );
}
