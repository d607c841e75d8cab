import type { Head } from '../../core/hair/head.ts';
import type { World } from '../world.ts';

export const newHead = (world: World, name: string): Head => ({
  id: world.newId(),
  name,
  avoid: [],
  stretch: [],
  setAside: [],
  added: world.now?.() ?? world.today,
});

/** Keeps one head; a new one is the one in use from then on. What could not be kept is said by the world. */
export function keepHead(world: World, head: Head) {
  const known = world.remembered.heads.some(({ id }) => id === head.id);
  return world.change(
    { do: 'put', thing: 'heads', value: head },
    ...(known ? [] : [{ do: 'set', settings: { headInUse: head.id } } as const]),
  );
}
