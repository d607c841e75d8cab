// The card of the first name that is underlined, opened as a reader does: by a press on its letters.
import type { Page } from 'playwright-core';

export async function openCard(page: Page): Promise<void> {
  const letters = () =>
    page.evaluate(() => {
      const [name] = [...CSS.highlights.values()].flatMap((each) => [...each]);
      const range = document.createRange();
      range.setStart(name!.startContainer, name!.startOffset);
      range.setEnd(name!.endContainer, name!.endOffset);
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
