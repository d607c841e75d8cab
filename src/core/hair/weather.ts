import type { Said } from '../judge/finding.ts';
import type { WashDayPractice } from '../judge/practice.ts';
import { type DayStep, staysOn } from '../wash-day/rules/day.ts';
import { dewPoint } from './dew-point.ts';

/**
 * What the air may do with humectant-heavy leave-ons at a very low or very high dew point; undefined where
 * nothing is to be said. Common practice: no published bands were found.
 */
export function weatherRemark(
  { celsius, humidity }: { celsius: number; humidity: number },
  steps: readonly DayStep[],
  { thresholds }: WashDayPractice,
): Said | undefined {
  const dew = dewPoint(celsius, humidity);
  if (dew === undefined) return undefined;
  const n = steps.filter(
    (step) => step.filled && staysOn(step) && step.traits.humectantsInFront.length > 0,
  ).length;
  if (n === 0) return undefined;
  const values = { n, dew: Math.round(dew) };
  if (dew < thresholds.dryDewPoint) return { key: 'routine.weather.dry', values };
  return dew > thresholds.humidDewPoint ? { key: 'routine.weather.humid', values } : undefined;
}
