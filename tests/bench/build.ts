// How long a wash day built from 12, 40 and 100 products takes, and a suggestion with as many to choose from: both run
// in the panel's worker. Random products, 30 days each.
import { buildDay } from '../../src/core/plan/build/build.ts';
import { suggest } from '../../src/core/plan/suggest.ts';
import { randomDay } from '../core/random-day.ts';

export async function lines(): Promise<string[]> {
  return [12, 40, 100].flatMap((products) => {
    const days = Array.from({ length: 30 }, (_, seed) => randomDay(seed + 1, 8, products));
    const built = days.map((day) => timed(() => buildDay(day)));
    const proven = built.filter(({ made }) => made.plans[0]?.best).length;
    const changed = days.map((day) => timed(() => suggest(day)));
    return [
      `build a day from ${products} products: ${spread(built)}; proven best ${proven} of ${days.length}`,
      `suggest among ${products} products: ${spread(changed)}`,
    ];
  });
}

function timed<T>(make: () => T): { made: T; ms: number } {
  const from = process.cpuUsage();
  const made = make();
  const { user, system } = process.cpuUsage(from);
  return { made, ms: (user + system) / 1000 };
}

function spread(runs: readonly { ms: number }[]): string {
  const sorted = runs.map(({ ms }) => ms).toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(0);
  return `median ${at(0.5)} ms of the processor, worst ${at(1)} ms`;
}
