import type { World } from '../world.ts';

export function ProductsPlace({ world }: { world: World }) {
  return <h2>{world.t('shell.place.products')}</h2>;
}
