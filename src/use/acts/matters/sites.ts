import type { ProductFacts, ProductKind } from '../../../core/product/product.ts';
import { nameWithoutMaker, pageAddress } from '../../../core/product/same-product.ts';
import type { Change, Remembered, Site } from '../../../store/remembered.ts';
import type { Decided, Met } from '../../knowing.ts';

/** What is remembered of the site of an address. */
export const siteOf = (sites: readonly Site[], url: string): Site | undefined => {
  const origin = originOf(url);
  return sites.find((site) => site.origin === origin);
};

/** What our script in a page has to know of its site: whether it is paused, and where its lists are. */
export function taughtOf(sites: readonly Site[], site: string | undefined): Pick<Site, 'paused' | 'listsAt'> {
  const { paused = false, listsAt = [] } = siteOf(sites, site ?? '') ?? {};
  return { paused, listsAt };
}

export const originOf = (url: string): string | undefined =>
  URL.canParse(url) ? new URL(url).origin : undefined;

export const hostOf = (url: string): string => (URL.canParse(url) ? new URL(url).host : url);

/** What tells a text from others when a site remembers that it is no list. */
export const markOfText = (text: string) => text.replace(/\s+/g, ' ').trim().slice(0, 120);

const mostKept = 300; // of each thing that one site's pages can make us remember

const newest = <T>(values: readonly T[]) => values.slice(-mostKept);

function changed({ sites }: Remembered, url: string, how: (site: Site) => Partial<Site>): Change[] {
  const origin = originOf(url);
  if (origin === undefined) return [];
  const site = siteOf(sites, url) ?? { origin, paused: false, notLists: [], listsAt: [] };
  return [{ do: 'put', thing: 'sites', value: { ...site, ...how(site) } }];
}

/** Nothing is read on this site until it is resumed. */
export const pauseSite = (remembered: Remembered, url: string): Decided => ({
  changes: changed(remembered, url, () => ({ paused: true })),
  say: { key: 'panel.reach.paused-now', values: { host: hostOf(url) } },
});

export const resumeSite = (remembered: Remembered, url: string): Decided => ({
  changes: changed(remembered, url, () => ({ paused: false })),
  say: { key: 'panel.reach.resumed', values: { host: hostOf(url) } },
});

/** This text of a site is no list. */
export const notAList = (remembered: Remembered, url: string, text: string): Decided => ({
  changes: changed(remembered, url, ({ notLists }) => ({
    notLists: newest([...new Set([...notLists, markOfText(text)])]),
  })),
  say: { key: 'page.done.not-a-list' },
});

/** This element of a site holds its lists. */
export const listIsHere = (remembered: Remembered, url: string, selector: string): Decided => ({
  changes: changed(remembered, url, ({ listsAt }) => ({
    listsAt: newest([...new Set([...listsAt, selector])]),
  })),
});

/** What the user taught of a site is forgotten; whether it is paused stays. */
export const unlearnSite = (remembered: Remembered, url: string): Decided => ({
  changes: changed(remembered, url, () => ({ notLists: [], listsAt: [], kinds: [] })),
  say: { key: 'settings.sites.unlearnt', values: { host: hostOf(url) } },
});

/** Whether a correction is of this product. */
const isOf =
  (facts: ProductFacts) =>
  ({ page, name }: { page: string; name: string }): boolean =>
    page === pageAddress(facts.url) && name === nameWithoutMaker(facts);

/** The kind that the user gave a product of a page, where they did. */
export function correctedKind(
  { sites }: Pick<Remembered, 'sites'>,
  facts: ProductFacts,
): ProductKind | undefined {
  const site = facts.url === undefined ? undefined : siteOf(sites, facts.url);
  return site?.kinds?.find(isOf(facts))?.kind;
}

/** The kind of a product of a page that is not kept; undefined takes the user's word back. */
export function kindOnPage(remembered: Remembered, { facts }: Met, kind: ProductKind | undefined): Change[] {
  const page = pageAddress(facts.url);
  if (page === undefined || facts.url === undefined) return [];
  const said = kind ? [{ page, name: nameWithoutMaker(facts), kind }] : [];
  return changed(remembered, facts.url, ({ kinds = [] }) => ({
    kinds: newest([...kinds.filter((each) => !isOf(facts)(each)), ...said]),
  }));
}
