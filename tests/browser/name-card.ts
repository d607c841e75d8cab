// The card of the first name that is underlined, opened as a reader does: by a press on its letters.
import type { Page } from 'playwright-core';

export async function openCard(page: Page): Promise<void> {
  const letters = () =>
    page.evaluate(() => {
      const names = [...CSS.highlights.values()].flatMap((each) =>
        [...each].map((name) => {
          const range = document.createRange();
          range.setStart(name.startContainer, name.startOffset);
          range.setEnd(name.endContainer, name.endOffset);
          return range;
        }),
      );
      // Lines are kept in the order they were drawn in, which a second drawing changes.
      const [range] = names.sort((a, b) => a.compareBoundaryPoints(Range.START_TO_START, b));
      if (!range) throw new Error('no name is underlined');
      scrollBy(0, range.getBoundingClientRect().y - innerHeight / 2);
      const { x, y, height } = range.getClientRects()[0]!;
      return { x: x + 4, y: y + height / 2 };
    });
  await letters();
  await page.waitForTimeout(300);
  const { x, y } = await letters();
  await page.mouse.click(x, y);
  await page.locator('.card:popover-open').waitFor();
}
