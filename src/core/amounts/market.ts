/** Whose ceilings a product keeps to: the European Union's (and of countries that keep its law), or another's. */
export type Market = 'eu' | 'other';

/** Where something is sold. */
export type Sold = {
  url?: string | undefined;
  currency?: string | undefined;
  /** The page's, BCP 47. */
  language?: string | undefined;
};

/** dictionary/amounts/markets.json: where the ceilings of EU law hold. */
export type Markets = {
  currencies: string[];
  /** Of hosts. */
  endings: string[];
  /** Spoken hardly anywhere else. */
  languages: string[];
  /** What templates of shops are set to before anybody changes it: says nothing. */
  unset: string[];
  sources: string[];
};

/**
 * The market that currency and host say, in this order, or else, where no page says it by either, the language;
 * undefined where they say nothing. Sold in several, it keeps to the strictest of them: one page of the EU is enough.
 */
export const marketOf = (sold: readonly Sold[], markets: Markets): Market | undefined =>
  strictest(sold.map((each) => byCurrency(each, markets) ?? byHost(each, markets))) ??
  strictest(sold.map((each) => byLanguage(each, markets)));

const strictest = (said: (Market | undefined)[]) =>
  said.includes('eu') ? 'eu' : said.find((market) => market !== undefined);

const byCurrency = ({ currency }: Sold, { currencies }: Markets): Market | undefined =>
  currency ? (currencies.includes(currency.toUpperCase()) ? 'eu' : 'other') : undefined;

function byHost({ url }: Sold, { endings }: Markets): Market | undefined {
  const ending = url?.match(/^[a-z]+:\/\/[^/?#:]*\.([a-z]{2})(?=[/?#:]|$)/i)?.[1]?.toLowerCase();
  // Endings of two letters are countries; the rest are sold from anywhere.
  if (!ending) return undefined;
  return endings.includes(ending) ? 'eu' : 'other';
}

/** By its region ("de-AT"), or by the language alone where that is enough. */
function byLanguage({ language }: Sold, { endings, languages, unset }: Markets): Market | undefined {
  const locale = localeOf(language);
  if (!locale || unset.includes(locale.baseName)) return undefined;
  const region = locale.region?.toLowerCase();
  if (!region) return languages.includes(locale.language) ? 'eu' : undefined;
  if (region.length > 2) return undefined; // part of the world: "es-419"
  return endings.includes(region === 'gb' ? 'uk' : region) ? 'eu' : 'other';
}

/** Undefined where it is no language tag; some servers write "de_AT". */
export function localeOf(language: string | undefined): Intl.Locale | undefined {
  try {
    return language ? new Intl.Locale(language.replaceAll('_', '-')) : undefined;
  } catch {
    return undefined;
  }
}
