import { expect, it } from 'vitest';
import { createReach } from '../../src/use/reach/reach.ts';

it('forgetting gives back every origin it may, keeps on where one stays, and takes the script off', async () => {
  let origins = ['https://shop.example/*', 'https://other.example/*', 'http://localhost/*'];
  let registered = [{ id: 'reader' }];
  const browser = {
    permissions: {
      getAll: async () => ({ origins }),
      remove: async ({ origins: [gone] }: { origins: string[] }) => {
        if (gone === 'http://localhost/*') throw new Error('required');
        origins = origins.filter((each) => each !== gone);
        return true;
      },
    },
    scripting: {
      getRegisteredContentScripts: async () => registered,
      unregisterContentScripts: async () => {
        registered = [];
      },
      registerContentScripts: async (scripts: { id: string; matches: string[] }[]) => {
        registered = scripts;
      },
      updateContentScripts: async () => undefined,
      executeScript: async () => [],
    },
    tabs: { query: async () => [], get: async () => undefined, sendMessage: async () => undefined },
  };
  const reach = createReach(browser as never, async () => []);
  await reach.forget();
  expect(origins).toEqual(['http://localhost/*']);
  // What the build itself asks for is read again; nothing the reader granted is.
  expect(registered).toMatchObject([{ matches: ['http://localhost/*'] }]);
  origins = [];
  await reach.forget();
  expect(registered).toEqual([]);
});
