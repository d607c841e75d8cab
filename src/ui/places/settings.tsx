import type { World } from '../world.ts';

export function SettingsPlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.settings')}</h2>;
}
