import type { World } from '../world.ts';

export function ComparePlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.compare')}</h2>;
}
