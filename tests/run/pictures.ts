// `npm run pictures`: the README's pictures, taken from the built extension in the invented shop.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { openShop, until } from '../browser/harness.ts';
import { look, seed, tabOf } from '../browser/views.ts';
import { root, run } from './steps.ts';

const folder = join(root, 'tests/pictures');
mkdirSync(folder, { recursive: true });
run('wxt', ['build', '--mode', 'localhost'], { quiet: true });
const shop = await openShop({ width: 1100 });
const panel = await shop.panelPage();
await seed(panel, 'many');

const page = await shop.open('/goods/gossamer-leave-in');
await page.setViewportSize({ width: 1100, height: 860 });
await shop.badgeBecomes(page, '3');
await page.getByText('Read more').click();
await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
await page.waitForTimeout(3000);
const unfold = page.getByRole('button', { name: 'Unfold' });
if (await unfold.count()) await unfold.first().click();
await page.mouse.move(20, 20);
// Open, and beside the list, not on it.
await until(
  () =>
    page.evaluate(() => {
      const strip = document.querySelector('[data-strandline]')!.shadowRoot!.querySelector('.strip.open');
      const letters = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (letters.nextNode() && !letters.currentNode.textContent!.includes('Hydrolyzed Silk'));
      const range = document.createRange();
      range.selectNodeContents(letters.currentNode);
      const [its, list] = [strip?.getBoundingClientRect(), range.getBoundingClientRect()];
      return its && (its.bottom < list.top || its.top > list.bottom);
    }),
  (beside) => beside === true,
);
await page.waitForTimeout(300); // it has come to rest
await page.screenshot({ path: join(folder, 'page.png') });
const tab = await tabOf(shop, page);

await panel.bringToFront();
const shoot = async (name: string, width: number, height: number, part?: string) => {
  await panel.setViewportSize({ width, height });
  await panel.waitForTimeout(500);
  const path = join(folder, `${name}.png`);
  await (part ? panel.locator(part).first() : panel).screenshot({ path });
};
await look(shop, panel, 'compare', tab);
await shoot('compare', 640, 900);
await look(shop, panel, 'routine', tab);
await shoot('routine', 400, 900);
await shoot('wash-day', 760, 900, 'figure.stack');
await look(shop, panel, 'hair', tab);
await shoot('hair', 640, 900, 'svg.matrix');
await shop.close();
console.log(`pictures in ${folder}`);
