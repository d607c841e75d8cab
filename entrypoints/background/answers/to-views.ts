import { type Answers, ask } from '../../../src/contract/messages.ts';
import { stampParts } from '../../../src/store/parts.ts';
import type { Parts } from '../parts.ts';
import { withPicture } from '../picture/with-picture.ts';
import { closedParts } from '../tab/closed-parts.ts';
import { inTab } from '../tab/in-tab.ts';
import { pickList } from '../tab/pick.ts';
import { forgetAll } from './forget.ts';

/** What panel and pages of the extension are answered. */
export const toViews = (parts: Parts): Answers => {
  const { shelves, keeper, readings, acting, reach } = parts;
  const partsFor = stampParts(crypto.randomUUID());
  return {
    read: (texts) => readings.readAll(texts),
    'look-up': (typed) => readings.lookUp(typed),
    close: (names) => names.map((name) => readings.lookup.close(name, 3)),
    'shelf-rows': ({ tab }) => shelves.rows(tab),
    'labels-met': () => shelves.cache.count(),
    'forget-labels': async () => {
      await shelves.cache.clear();
      return null;
    },
    'press-shelf': async ({ tab }) => {
      await ask(inTab(tab, 0), 'read-shelf', { told: true });
      return null;
    },
    act: async ({ act, id, tab }) => acting.act(await withPicture(act, tab, parts), id),
    undo: ({ key }) => acting.undo(key),
    'remembered-parts': async (has) => {
      const news = partsFor(await keeper.remembered(), has);
      // Of a panel that opens: built while it draws, as it asks for readings next.
      if (Object.keys(has).length === 0) setTimeout(() => readings.lookup);
      return news;
    },
    forget: () => forgetAll(parts),
    'read-tab': async ({ tab }) => {
      await reach.read(tab);
      return null;
    },
    'closed-parts': ({ tab }) => closedParts(tab, readings.finder),
    'pick-list': async ({ tab }) => {
      await pickList(tab, keeper);
      return null;
    },
  };
};
