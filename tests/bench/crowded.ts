// 5,000 products and 2,000 wash days in the built panel: the longest task of each thing done, in milliseconds of
// processor time. Products and days are those of the invented shop, again and again; each has its own name and day.
import type { LogEntry } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { openShop, until } from '../browser/harness.ts';
import { seeds } from '../browser/seeds.ts';
import { longestTasks } from '../browser/tasks.ts';
import { changeIn, look, places, seed, tabOf } from '../browser/views.ts';
import { ms } from './measure.ts';

const [products, days, aim] = [5000, 2000, 50];
const inOneChange = 500;

function* crowd(): Generator<Change> {
  const of = (thing: 'products' | 'log') =>
    seeds.many.flatMap((change) => (change.do === 'put' && change.thing === thing ? [change.value] : []));
  const [goods, log] = [of('products') as { id: string; name: string }[], of('log') as LogEntry[]];
  for (let i = 0; i < products; i++) {
    const one = goods[i % goods.length]!;
    const added = new Date(Date.UTC(2026, 0, 1, 0, i)).toISOString();
    const value = { ...one, id: `p${i}`, name: `${one.name} ${i}`, added };
    yield { do: 'put', thing: 'products', value } as unknown as Change;
  }
  for (let i = 0; i < days; i++) {
    const one = log[i % log.length]!;
    // Without the labels of each day: the browser has room for 10 MB.
    const steps = one.done.steps.map(({ label: _, ...step }) => step);
    const date = new Date(Date.UTC(2026, 10, 24 - i)).toISOString().slice(0, 10);
    yield { do: 'put', thing: 'log', value: { ...one, id: `l${i}`, done: { ...one.done, steps }, date } };
  }
}

export async function lines(): Promise<string[]> {
  const shop = await openShop();
  try {
    const panel = await shop.panelPage();
    await panel.setViewportSize({ width: 380, height: 800 });
    const shown = await shop.open('/goods/heavy-weather-mask');
    await until(
      () => shop.badge(shown),
      (text) => text !== '',
    );
    const tab = await tabOf(shop, shown);
    await seed(panel, 'many');
    const all = [...crowd()];
    for (let i = 0; i < all.length; i += inOneChange) await changeIn(panel, all.slice(i, i + inOneChange));
    const told: string[] = [];
    const measure = async (name: string, job: () => Promise<unknown>) => {
      const { ours, background } = await longestTasks(shop.context, job);
      const over = Math.max(ours, background) > aim ? 'over ' : '';
      told.push(`${over}${name}: panel ${ms(ours)}, background ${ms(background)} (aim ${aim})`);
    };
    const rest = (time: number) => panel.waitForTimeout(time);
    await measure('opened at Products', async () => {
      await look(shop, panel, 'products', tab);
      await rest(1500);
    });
    for (const place of places)
      await measure(`to ${place}`, async () => {
        await panel.click(`#tab-${place}`);
        await rest(700);
      });
    await panel.click('#tab-products');
    await rest(700);
    await measure('scrolled', async () => {
      for (let i = 0; i < 30; i++) {
        await panel.mouse.wheel(0, 1500);
        await rest(30);
      }
      await rest(500);
    });
    await panel.evaluate(() => scrollTo(0, 0));
    await measure('searched', async () => {
      await panel.locator('input[type=search]').first().pressSequentially('mask wea', { delay: 60 });
      await rest(800);
    });
    await measure('a setting changed', async () => {
      await changeIn(panel, [{ do: 'set', settings: { glyphSize: 'large' } }]);
      await rest(1200);
    });
    return told;
  } finally {
    await shop.close();
  }
}
