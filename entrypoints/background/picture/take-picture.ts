import { browser } from 'wxt/browser';
import { type Seen, seenPicture } from '../../../src/page/alone/seen-picture.ts';
import { inShot } from '../../../src/picture/in-shot.ts';
import { shotOfTab } from '../../../src/picture/shot-of-tab.ts';
import { smallPictureOf } from '../../../src/picture/small-picture.ts';
import { mostOfPicture } from '../../../src/store/remembered.ts';
import type { PictureWanted } from '../../../src/use/acts/picture-wanted.ts';

const side = 96; // pixels: 48 of the panel's on a fine screen

/**
 * The picture of the product a tab shows, small, as a data URL: the pixels that the page has loaded already, or where
 * they are another site's, what the tab shows of them, if the browser lets us see that. No request is made.
 * @param of address of the picture by the page's own word; or of the product's page, where it stands on a shelf
 */
export async function takePicture(tab: number, of: PictureWanted): Promise<string | undefined> {
  const [told] = await browser.scripting.executeScript({
    target: { tabId: tab, frameIds: [0] },
    func: seenPicture,
    args: [of.said ?? null, side, of.card ?? null, of.on ?? null],
  });
  const seen = told?.result as Seen | null | undefined;
  if (!seen) return undefined;
  if ('pixels' in seen) return smallPictureOf(seen.pixels, side, mostOfPicture);
  const shot = await shotOfTab(browser.tabs, tab);
  return shot && smallPictureOf(shot, side, mostOfPicture, (width) => inShot(seen, width));
}
