/**
 * A cell that no spreadsheet runs, whatever it takes for the separator: letters that begin a formula get a mark
 * before them at the start of the cell and after any separator or line end within it (OWASP, CSV injection).
 */
export const plainCell = (text: string): string =>
  text
    .replaceAll('\0', '')
    .replace(/(^|[;\t|\r\n])([ \u00a0]{0,9})(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g, "$1$2'");

/** Whether a cell is to stand in quotes even where its own separator does not ask for them. */
export const wantsQuotes = (value: unknown): boolean =>
  typeof value === 'string' && /[;\t|'\r\n]/.test(value);
