/**
 * Dew point in °C from temperature in °C and relative humidity in percent, by the Magnus form with the
 * constants of Alduchov & Eskridge (J Appl Meteorol 1996;35:601–609), good within ±0.35 °C from −40 to 60 °C.
 * Undefined outside that range or where the humidity is not above 0 and at most 100.
 */
export function dewPoint(celsius: number, humidity: number): number | undefined {
  if (!(celsius >= -40 && celsius <= 60 && humidity > 0 && humidity <= 100)) return undefined;
  const a = 17.625;
  const b = 243.04;
  const gamma = Math.log(humidity / 100) + (a * celsius) / (b + celsius);
  return (b * gamma) / (a - gamma);
}
