/** Celsius as the user writes it, and back. */
export const toUnits = (celsius: number, imperial: boolean) =>
  imperial ? Math.round((celsius * 9) / 5 + 32) : Math.round(celsius * 10) / 10;
export const toCelsius = (degrees: number, imperial: boolean) =>
  imperial ? Math.round(((degrees - 32) * 50) / 9) / 10 : degrees;

/** A temperature as the user writes it. */
export function degreesWords(celsius: number, imperial: boolean, lang: string): string {
  return `${new Intl.NumberFormat(lang).format(toUnits(celsius, imperial))} ${imperial ? '°F' : '°C'}`;
}
