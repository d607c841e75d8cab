import type { MessageName, Messages } from '../../src/contract/messages.ts';
import type { World } from '../../src/ui/world.ts';

type Asked = <N extends MessageName>(
  name: N,
  request: Messages[N]['request'],
) => Promise<Messages[N]['reply']>;

/** The shelf of the tab in view. */
export const shelfOf = (tab: number, asked: Asked, save: World['save']): NonNullable<World['shelf']> => ({
  rows: () => asked('shelf-rows', { tab }),
  read: async () => void (await asked('press-shelf', { tab })),
  save: async (rows) => {
    const { shelfCsv } = await import('../../src/store/csv.ts');
    save('shelf.csv', 'text/csv', shelfCsv(rows));
  },
});
