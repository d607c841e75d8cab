import type { World } from '../world.ts';

export function LogPlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.log')}</h2>;
}
