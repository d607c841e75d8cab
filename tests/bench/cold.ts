// The lookup, the finder and the first label in a process that has never built one, as a background worker that was put
// to sleep wakes up with what its build wrote ahead: the least of many, since the machine is not always alone. Processor
// time leaves out what other programs took.
import { spawnSync } from 'node:child_process';
import { writeAhead } from '../../entrypoints/background/knowing/write-ahead.ts';
import { root } from '../run/steps.ts';
import { ms } from './measure.ts';

const runs = 15;
const wakes = `
import { readFileSync } from 'node:fs';
const written = JSON.parse(readFileSync(0, 'utf8'));
const { entries, findingFacts, limits, patterns } = await import('./dictionary/index.ts');
const { createLookup } = await import('./src/core/names/lookup.ts');
const { createFinder } = await import('./src/find/finder.ts');
const { readLabel } = await import('./src/core/reading/reading.ts');
const took = [];
const time = (work) => {
  const from = process.cpuUsage();
  const began = performance.now();
  const made = work();
  const clock = performance.now() - began;
  const { user, system } = process.cpuUsage(from);
  took.push([(user + system) / 1000, clock]);
  return made;
};
const lookup = time(() => {
  const built = createLookup(entries, patterns, limits, written.keys?.split('\\n'));
  built.find('Hydrolyzed Wheat Protein');
  return built;
});
time(() => createFinder(entries, lookup, findingFacts, written.vocabulary?.split('\\n')));
time(() => readLabel('Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Chloride, Butyrospermum Parkii (Shea) Butter, Hydrolyzed Keratin, Parfum, Phenoxyethanol, Citric Acid, Limonene', lookup));
console.log(JSON.stringify(took));
`;

export async function lines(): Promise<string[]> {
  const least = (written: Partial<ReturnType<typeof writeAhead>>) => {
    const told = Array.from({ length: runs }, () => {
      const args = ['--input-type=module', '-e', wakes];
      const { stdout } = spawnSync(process.execPath, args, {
        cwd: root,
        encoding: 'utf8',
        input: JSON.stringify(written),
      });
      return JSON.parse(stdout) as [processor: number, clock: number][];
    });
    return (which: number) => {
      const [processor, clock] = [0, 1].map((at) => ms(Math.min(...told.map((run) => run[which]![at]!))));
      return `${processor} of processor time, ${clock} by the clock`;
    };
  };
  const [ahead, without] = [least(writeAhead()), least({})];
  return [
    `lookup built and asked for one name in a cold process: ${ahead(0)}, least of ${runs} (aim 15; ${without(0)} where nothing is written ahead)`,
    `finder built after it: ${ahead(1)} (${without(1)} where nothing is written ahead)`,
    `first label of ten names read after it: ${ahead(2)}`,
  ];
}
