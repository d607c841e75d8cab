/** An amount as people write it, with its currency where that is known; a page may print any three letters as one. */
export function money(amount: number, currency: string | undefined, lang: string): string {
  try {
    return new Intl.NumberFormat(lang, currency ? { style: 'currency', currency } : {}).format(amount);
  } catch {
    return `${new Intl.NumberFormat(lang, { maximumFractionDigits: 2 }).format(amount)} ${currency}`;
  }
}
