import type { World } from '../world.ts';

export function ThisPagePlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.this-page')}</h2>;
}
