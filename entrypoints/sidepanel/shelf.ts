import type { Ask } from '../../src/contract/messages.ts';
import type { World } from '../../src/ui/world.ts';

/** The shelf of the tab in view. */
export const shelfOf = (tab: number, asked: Ask, save: World['save']): NonNullable<World['shelf']> => ({
  rows: () => asked('shelf-rows', { tab }),
  read: async () => void (await asked('press-shelf', { tab })),
  save: async (rows) => {
    const { shelfCsv } = await import('../../src/store/files/csv.ts');
    save('shelf.csv', 'text/csv', shelfCsv(rows));
  },
});
