import type { World } from '../world.ts';

export function RoutinePlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.routine')}</h2>;
}
