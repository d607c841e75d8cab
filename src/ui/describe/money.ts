/** An amount as people write it, with its currency where that is known; a page may print any three letters as one. */
export function money(amount: number, currency: string | undefined, lang: string): string {
  try {
    return new Intl.NumberFormat(lang, currency ? { style: 'currency', currency } : {}).format(amount);
  } catch {
    const digits = { minimumFractionDigits: 2, maximumFractionDigits: 2 };
    return `${new Intl.NumberFormat(lang, digits).format(amount)} ${currency}`;
  }
}
