// What a worker that was just started has built before it answers.
import { expect, it } from 'vitest';
import { readingsOfDictionary } from '../../entrypoints/background/knowing/readings.ts';

/** Time of the processor, in ms. */
const spent = (task: () => unknown): number => {
  const before = process.cpuUsage();
  task();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

it('nothing of the dictionary until a text is read, and the same from then on', () => {
  const made = Array.from({ length: 3 }, () => spent(readingsOfDictionary));
  const readings = readingsOfDictionary();
  const first = spent(() => readings.read('Aqua, Glycerin', {}));
  expect(Math.min(...made)).toBeLessThan(first / 5);
  expect(readings.lookup).toBe(readings.lookup);
  expect(readings.finder).toBe(readings.finder);
  expect(readings.read('Aqua, Glycerin', {}).mentions).toHaveLength(2);
  expect(readings.lookUp('glycer')[0]?.name).toBe('Glycerin');
});
