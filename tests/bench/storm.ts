// Ten thousand nodes a second for ten seconds, and our longest stretch of work on every page of the shop with the
// CPU four times slower.
import { openShop } from '../browser/harness.ts';
import { goods } from '../store/goods.ts';
import { ms } from './measure.ts';
import { serveBench } from './page.ts';
import { profiled } from './profile.ts';

export async function lines(): Promise<string[]> {
  const shop = await openShop();
  const bench = await serveBench();
  const page = await shop.context.newPage();
  await page.goto(bench.url(3000));
  await page.waitForFunction(() => performance.getEntriesByName('strandline painted').length > 0);
  const storm = await profiled(page, () =>
    page.evaluate(
      () =>
        new Promise<void>((done) => {
          const box = document.body.appendChild(document.createElement('div'));
          const end = performance.now() + 10_000;
          const timer = setInterval(() => {
            box.replaceChildren();
            for (let i = 0; i < 250; i++) {
              const row = document.createElement('p');
              row.innerHTML = '<b>Words</b> and <i>more</i> words';
              row.append(document.createElement('span'));
              box.append(row); // with the removals about 1,000 changes each 100th of a second
            }
            if (performance.now() < end) return;
            clearInterval(timer);
            done();
          }, 100);
        }),
    ),
  );
  const worst = { name: '', longest: 0 };
  const path = (id: string) => `/goods/${id}`;
  for (const { id } of goods) {
    await page.goto('about:blank');
    const spent = await profiled(
      page,
      async () => {
        await page.goto(shop.store.url + path(id));
        await page.waitForTimeout(900);
      },
      4,
    );
    if (spent.longest > worst.longest) Object.assign(worst, { name: id, longest: spent.longest });
  }
  await bench.close();
  await shop.close();
  return [
    `storm of 10,000 nodes a second for 10 s: ${(storm.share * 100).toFixed(1)} % of main-thread time (aim 5), longest stretch ${ms(storm.longest)}`,
    `longest stretch of ours on ${goods.length} pages of the shop, CPU 4× slower: ${ms(worst.longest)} on ${worst.name} (aim 50)`,
  ];
}
