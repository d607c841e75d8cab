// How long a wash day built from 12, 30, 40, 60 and 100 products takes: until the first plan, and until it is proven
// best or given up; and a suggestion with as many to choose from. Both run in the panel's worker, which stops after
// 2 s. Random products of up to 17 kinds, 30 days each.
import { buildDay, building } from '../../src/core/plan/build/build.ts';
import { suggest } from '../../src/core/plan/suggest.ts';
import { randomDay } from '../core/random-day.ts';

export async function lines(): Promise<string[]> {
  return [12, 30, 40, 60, 100].flatMap((products) => {
    const days = Array.from({ length: 30 }, (_, seed) => randomDay(seed + 1, 8, products));
    const firsts = days.map((day) =>
      timed(() => {
        for (const { soFar } of building(day)) if (soFar().plans.length > 0) return;
      }),
    );
    const built = days.map((day) => timed(() => buildDay(day)));
    const proven = built.filter(({ made }) => made.plans[0]?.best).length;
    const changed = days.map((day) => timed(() => suggest(day)));
    return [
      `build a day from ${products} products: first plan ${spread(firsts)}; to the end ${spread(built)}; proven best ${proven} of ${days.length}`,
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
