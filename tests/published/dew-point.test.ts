import { expect, it } from 'vitest';
import { dewPoint } from '../../src/core/hair/dew-point.ts';

// T °C, RH %, dew point by five published coefficient sets: WMO-No. 8 / Sonntag 1990 (from memory), Alduchov &
// Eskridge 1996, Bolton 1980 as coded at ETH Zürich, Magnus/Tetens in the same code, Vaisala's formulas. They
// agree within 0.05 °C over this range, so that is the tolerance; our own constants must match to the digit.
const published: [number, number, number[]][] = [
  [20, 50, [9.255, 9.261, 9.27, 9.269, 9.263]],
  [25, 50, [13.852, 13.858, 13.868, 13.857, 13.856]],
  [25, 60, [16.693, 16.698, 16.705, 16.695, 16.696]],
  [30, 30, [10.529, 10.54, 10.557, 10.537, 10.537]],
  [30, 80, [26.169, 26.171, 26.175, 26.165, 26.168]],
  [35, 20, [8.688, 8.702, 8.724, 8.693, 8.696]],
  [10, 40, [-3.001, -2.993, -2.984, -2.958, -2.98]],
  [0, 80, [-3.04, -3.039, -3.037, -3.027, -3.034]],
  [-10, 70, [-14.439, -14.436, -14.434, -14.409, -14.426]],
];

it.each(published)('%d °C at %d %%', (celsius, humidity, values) => {
  const ours = dewPoint(celsius, humidity)!;
  for (const value of values) expect(Math.abs(ours - value)).toBeLessThan(0.05);
  expect(ours).toBeCloseTo(values[1]!, 3);
});

it('is the temperature itself in saturated air', () => {
  for (const celsius of [-30, 0, 15, 40]) expect(dewPoint(celsius, 100)).toBeCloseTo(celsius, 9);
});

it('gives back the humidity it came from (T 25, Td 16.7 → 60.01 %; T 30, Td 15 → 40.17 %)', () => {
  expect(dewPoint(25, 60.01)).toBeCloseTo(16.7, 2);
  expect(dewPoint(30, 40.17)).toBeCloseTo(15, 2);
});

it.each([
  [20, 0],
  [20, -5],
  [20, 101],
  [-41, 50],
  [61, 50],
  [Number.NaN, 50],
  [20, Number.NaN],
])('has no answer at %d °C and %d %%', (celsius, humidity) => {
  expect(dewPoint(celsius, humidity)).toBeUndefined();
});
