// `npm test`: everything, from static checks to real browsers, ending with one line that sums it up.
import { builds } from '../browser/build.ts';
import { findChromium, findFirefox, noChromium } from './browsers.ts';
import { checks } from './checks.ts';
import { runAll, type Step, type Tally } from './steps.ts';
import { runSuite } from './suites.ts';

const endToEnd = 'tests/browser/vitest.config.ts';
const sum: Tally = { passed: 0, failed: 0, skipped: 0 };
const from = performance.now();

function part(name: string, does: () => Tally) {
  const began = performance.now();
  console.log(`\n== ${name}`);
  const tally = does();
  sum.passed += tally.passed;
  sum.failed += tally.failed;
  sum.skipped += tally.skipped;
  console.log(`== ${name}: ${Math.round((performance.now() - began) / 1000)} s`);
}

part('static checks', () => runAll(checks));
part('unit and published checks', () => runSuite('unit', 'tests/vitest.config.ts'));
part('builds', () => runAll(builds.map((args): Step => [`wxt ${args.join(' ')}`, 'wxt', args])));
part('end to end in Chromium', () => {
  const chromium = findChromium();
  if (chromium) return runSuite('chromium', endToEnd, ['--exclude', 'tests/browser/*firefox*']);
  console.log(noChromium);
  return { passed: 0, failed: 1, skipped: 0 };
});
part('end to end in Firefox', () => {
  if (findFirefox()) return runSuite('firefox', endToEnd, ['firefox']);
  console.log('skipped: no Firefox was found, and Debian’s firefox-esr could not be installed.');
  return { passed: 0, failed: 0, skipped: 1 };
});

const { passed, failed, skipped } = sum;
console.log(`\n${Math.round((performance.now() - from) / 1000)} s in all`);
console.log(`${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed ? 1 : 0;
