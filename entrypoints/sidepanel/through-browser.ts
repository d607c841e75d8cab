import type { Ask } from '../../src/contract/messages.ts';
import type { State } from '../../src/ui/panel/state.ts';
import type { World } from '../../src/ui/world.ts';
import { openStore, save } from './files.ts';
import { picturesOf } from './pictures.ts';
import { shelfOf } from './shelf.ts';

/** What the panel's places ask of the background, of the browser and of the tab in view. */
export const throughBrowser = (browser: typeof chrome, state: State, held: number | undefined, asked: Ask) =>
  ({
    close: (names: string[]) => asked('close', names).catch(() => names.map((): string[] => [])),
    lookUp: (typed: string) => asked('look-up', typed).catch(() => []),
    save,
    store: openStore,
    pictures: picturesOf(browser, () => state.tab?.id),
    ...(state.tab && { shelf: shelfOf(state.tab.id, asked, save) }),
    labelsMet: { count: () => asked('labels-met', null), forget: () => asked('forget-labels', null) },
    ...(held === undefined && {
      openWide: () => {
        const url = browser.runtime.getURL(`/sidepanel.html?tab=${state.tab?.id ?? ''}#${state.place}`);
        void browser.tabs.create({ url });
      },
    }),
  }) satisfies Partial<World>;
