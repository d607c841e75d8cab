import type { FoundText, TabPage } from '../../src/messages.ts';
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

/** Changes that keep the product of a list: a label that is kept already is only met again. */
export function keeping(
  remembered: Remembered,
  page: TabPage,
  list: FoundText,
  id: string,
  now: string,
): Change[] {
  const {
    name = page.title,
    maker,
    kind,
    use,
    size,
    sizeUnit,
    price,
    currency,
    variant,
  } = list.product ?? {};
  const url = list.product?.url ?? page.url;
  const before = remembered.products.find(
    (product) => product.name === name && product.sources.some((source) => source.url === url),
  );
  const source = {
    url,
    ...(price === undefined ? {} : { price }),
    ...(currency ? { currency } : {}),
    ...(variant ? { variant } : {}),
    seen: now,
  };
  const labels = before?.labels ?? [];
  return [
    {
      do: 'put',
      thing: 'products',
      value: {
        id: before?.id ?? id,
        name,
        ...(maker ? { maker } : {}),
        ...(kind ? { kind } : {}),
        ...(use ? { use } : {}),
        ...(size === undefined ? {} : { size }),
        ...(sizeUnit ? { sizeUnit } : {}),
        owned: false,
        notes: '',
        added: now,
        ...before,
        labels: labels[0]?.text === list.text ? labels : [{ text: list.text, seen: now }, ...labels],
        sources: [source, ...(before?.sources ?? []).filter((each) => each.url !== url)],
      },
    },
  ];
}
