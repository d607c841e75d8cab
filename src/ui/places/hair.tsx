import type { World } from '../world.ts';

export function HairPlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.hair')}</h2>;
}
