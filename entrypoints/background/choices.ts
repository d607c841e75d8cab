import type { FoundText, TabPage } from '../../src/contract/messages.ts';
import { keepMet } from '../../src/core/product/same-product.ts';
import type { Change, Remembered, Site } from '../../src/store/remembered.ts';
import { markOfText } from './orders.ts';
import { siteOf } from './reach.ts';

const siteAt = (remembered: Remembered, url: string): Site =>
  siteOf(remembered.sites, url) ?? { origin: new URL(url).origin, paused: false, notLists: [], listsAt: [] };

const put = (value: Site): Change[] => [{ do: 'put', thing: 'sites', value }];

/** Changes that pause a site. */
export const pausing = (remembered: Remembered, url: string) =>
  put({ ...siteAt(remembered, url), paused: true });

/** Changes that remember a text of a site as no list. */
export function notAList(remembered: Remembered, url: string, text: string): Change[] {
  const site = siteAt(remembered, url);
  return put({ ...site, notLists: [...new Set([...site.notLists, markOfText(text)])] });
}

/** Changes that remember which element of a site holds its lists. */
export function listIsHere(remembered: Remembered, url: string, selector: string): Change[] {
  const site = siteAt(remembered, url);
  return put({ ...site, listsAt: [...new Set([...site.listsAt, selector])] });
}

/** Changes that keep the product of a list, merged with what is kept of it: earlier labels and corrections stay. */
export function keeping(
  remembered: Remembered,
  page: TabPage,
  list: FoundText,
  id: string,
  now: string,
): Change[] {
  const facts = {
    ...list.product,
    name: list.product?.name ?? page.title,
    url: list.product?.url ?? page.url,
  };
  const { product } = keepMet(remembered.products, { facts, text: list.text, now }, id);
  return [{ do: 'put', thing: 'products', value: product }];
}
