import type { PictureRef } from '../../src/contract/messages.ts';
import type { PictureProblem } from '../../src/core/picture/check-names.ts';
import type { Box } from '../../src/core/picture/join-lines.ts';
import { pictureInView } from '../../src/page/alone/picture-in-view.ts';
import { fileOfDataUrl } from '../../src/picture/data-url.ts';
import type { PictureSource, Pictures } from '../../src/ui/world.ts';

type Browser = Pick<typeof chrome, 'runtime' | 'scripting' | 'tabs'>;
type ToRead = { file: Blob; part?: Box };

/** Reads pictures in this window, with the code for them loaded when it is first asked for. */
export const picturesOf = (browser: Browser, tab: () => number | undefined): Pictures => ({
  async read(source, how) {
    const [{ readPicture }, picture] = await Promise.all([
      import('../../src/picture/read-picture.ts'),
      pictureOf(browser, tab(), source),
    ]);
    if (typeof picture === 'string') return picture;
    const { file, part } = picture;
    return readPicture(file, browser.runtime.getURL('print-reader/'), { ...how, ...(part && { part }) });
  },
});

async function pictureOf(
  browser: Browser,
  tab: number | undefined,
  source: PictureSource,
): Promise<ToRead | PictureProblem> {
  if ('file' in source) return source;
  if (tab === undefined) return 'not-let';
  return captured(browser, tab, source.onPage).catch(() => 'not-let' as const);
}

/** What the tab shows of a picture, as it stands on the screen: no request is made for it. */
async function captured(browser: Browser, tab: number, ref: PictureRef): Promise<ToRead | PictureProblem> {
  const { active, windowId } = await browser.tabs.get(tab);
  if (!active) return 'not-in-view';
  const [told] = await browser.scripting.executeScript({
    target: { tabId: tab, frameIds: [0] },
    func: pictureInView,
    args: [ref.src ?? null],
  });
  // Where a frame stands in the view is not told: then all that is in view is read.
  const seen = told?.result;
  if (!seen && ref.frame === 0) return 'not-in-view';
  const shot = await browser.tabs.captureVisibleTab(windowId, { format: 'png' });
  const file = fileOfDataUrl(shot);
  if (!seen || ref.frame !== 0) return { file };
  const whole = await createImageBitmap(file);
  const scale = whole.width / seen.width;
  whole.close();
  const [left, top, right, bottom] = seen.box.map((each) => Math.round(each * scale)) as [
    number,
    number,
    number,
    number,
  ];
  return { file, part: { left, top, right, bottom } };
}
