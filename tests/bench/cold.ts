// The lookup in a process that has never built one, as a background worker that was put to sleep wakes up: the least
// of many, since the machine is not always alone. Processor time leaves out what other programs took.
import { spawnSync } from 'node:child_process';
import { root } from '../run/steps.ts';
import { ms } from './measure.ts';

const runs = 15;
const wakes = `
const { entries, limits, patterns } = await import('./dictionary/index.ts');
const { createLookup } = await import('./src/core/names/lookup.ts');
const from = process.cpuUsage();
const began = performance.now();
createLookup(entries, patterns, limits).find('Hydrolyzed Wheat Protein');
const took = performance.now() - began;
const { user, system } = process.cpuUsage(from);
console.log(JSON.stringify([took, (user + system) / 1000]));
`;

export async function lines(): Promise<string[]> {
  const told = Array.from({ length: runs }, () => {
    const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', wakes], {
      cwd: root,
      encoding: 'utf8',
    });
    return JSON.parse(stdout) as [number, number];
  });
  const least = (at: 0 | 1) => ms(Math.min(...told.map((each) => each[at])));
  return [
    `lookup built and asked for one name in a cold process: ${least(1)} of processor time, ${least(0)} by the clock, least of ${runs} (aim 35)`,
  ];
}
