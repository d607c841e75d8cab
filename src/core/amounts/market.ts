/** Whose ceilings a product keeps to: the European Union's (and of countries that keep its law), or another's. */
export type Market = 'eu' | 'other';

/** Where something is sold. */
export type Sold = { url?: string | undefined; currency?: string | undefined };

/** dictionary/amounts/markets.json: currencies and endings of hosts in which the ceilings of EU law hold. */
export type Markets = { currencies: string[]; endings: string[]; sources: string[] };

/**
 * The market that currency and host say, in this order; undefined where they say nothing. Sold in several, it keeps
 * to the strictest of them: one page of the EU is enough.
 */
export function marketOf(sold: readonly Sold[], markets: Markets): Market | undefined {
  const said = sold.map((each) => byCurrency(each, markets) ?? byHost(each, markets));
  return said.includes('eu') ? 'eu' : said.find((market) => market !== undefined);
}

const byCurrency = ({ currency }: Sold, { currencies }: Markets): Market | undefined =>
  currency ? (currencies.includes(currency.toUpperCase()) ? 'eu' : 'other') : undefined;

function byHost({ url }: Sold, { endings }: Markets): Market | undefined {
  const ending = url?.match(/^[a-z]+:\/\/[^/?#:]*\.([a-z]{2})(?=[/?#:]|$)/i)?.[1]?.toLowerCase();
  // Endings of two letters are countries; the rest are sold from anywhere.
  if (!ending) return undefined;
  return endings.includes(ending) ? 'eu' : 'other';
}
