import type { PictureProblem } from '../../src/core/picture/check-names.ts';
import type { PictureReader, PictureSource } from '../../src/ui/world.ts';
import { captured, type ToRead } from './captured.ts';

/** Reads pictures in this window, with the code for them loaded when it is first asked for. */
export const picturesOf = (browser: typeof chrome, tab: () => number | undefined): PictureReader => ({
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
  browser: typeof chrome,
  tab: number | undefined,
  source: PictureSource,
): Promise<ToRead | PictureProblem> {
  if ('file' in source) return source;
  if (tab === undefined) return 'not-let';
  return captured(browser, tab, source.onPage).catch(() => 'not-let' as const);
}
