import { browser } from 'wxt/browser';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { Keeper } from '../../src/store/keeper.ts';
import { orderOf } from '../../src/ui/describe/drawn/order.ts';
import type { Readings } from '../../src/use/reading/readings.ts';
import type { MetLabels } from '../../src/use/shelf/met-labels.ts';
import { createFrames, type Frames } from '../../src/use/tabs/read-frames.ts';
import type { TabPages } from '../../src/use/tabs/tab-pages.ts';
import { withKind } from './knowing/kinds.ts';
import { bring } from './tab/bring.ts';
import { wordsForReader } from './words.ts';

/** The frames of the browser's tabs, read in the user's language. */
export const framesOfBrowser = (
  keeper: Keeper,
  readings: Readings,
  tabPages: TabPages,
  { meet }: Pick<MetLabels, 'meet'>,
): Frames =>
  createFrames({
    keeper,
    readings,
    tabPages,
    withKind,
    meet,
    drawing: async (remembered) => {
      const t = await wordsForReader(remembered);
      const { settings, heads } = remembered;
      return (list) => orderOf(list, settings, heads.length > 1, sources, t);
    },
    bringPainter: ({ tab, frame }) => bring({ tabId: tab, frameIds: [frame] }, 'painter.js'),
    setBadge: (tab, text) => browser.action.setBadgeText({ tabId: tab, text }),
  });
