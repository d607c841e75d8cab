import type { PictureRef } from '../../src/contract/messages.ts';
import type { Box } from '../../src/core/picture/join-lines.ts';
import { pictureInView } from '../../src/page/alone/picture-in-view.ts';
import { fileOfDataUrl } from '../../src/picture/data-url.ts';
import { inShot } from '../../src/picture/in-shot.ts';
import { shotOfTab } from '../../src/picture/shot-of-tab.ts';

/** A picture to read, or the part of it that holds the print. */
export type ToRead = { file: Blob; part?: Box };

/** What the tab shows of a picture, as it stands on the screen: no request is made for it. */
export async function captured(
  browser: Pick<typeof chrome, 'scripting' | 'tabs'>,
  tab: number,
  ref: PictureRef,
): Promise<ToRead | 'not-in-view'> {
  if (!(await browser.tabs.get(tab)).active) return 'not-in-view';
  const [told] = await browser.scripting.executeScript({
    target: { tabId: tab, frameIds: [0] },
    func: pictureInView,
    args: [ref.src ?? null],
  });
  const seen = told?.result;
  if (!seen && ref.frame === 0) return 'not-in-view';
  const shot = await shotOfTab(browser.tabs, tab);
  if (!shot) return 'not-in-view';
  const file = fileOfDataUrl(shot);
  // Where a frame stands in the view is not told: then all that is in view is read.
  if (!seen || ref.frame !== 0) return { file };
  const whole = await createImageBitmap(file);
  const part = inShot(seen, whole.width);
  whole.close();
  return { file, part };
}
