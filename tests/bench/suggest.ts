// How long the smallest settling change takes to find: 10 steps, 40 products, 200 random wash days.
import { suggest } from '../../src/core/plan/suggest.ts';
import { randomDay } from '../core/random-day.ts';

export async function lines(): Promise<string[]> {
  const times: number[] = [];
  const work: number[] = [];
  let tried = 0;
  let gaveUp = 0;
  const answers: Record<string, number> = {};
  for (let seed = 1; seed <= 200; seed++) {
    const input = randomDay(seed, 10, 40);
    const before = process.cpuUsage();
    const from = performance.now();
    const found = suggest(input);
    times.push(performance.now() - from);
    const { user, system } = process.cpuUsage(before);
    work.push((user + system) / 1000);
    answers[found.answer] = (answers[found.answer] ?? 0) + 1;
    if ('tried' in found) tried = Math.max(tried, found.tried);
    if (found.answer === 'none' ? !found.complete : found.answer === 'found' && !found.fewest) gaveUp++;
  }
  for (const all of [times, work]) all.sort((a, b) => a - b);
  const at = (share: number, of = times) => of[Math.floor(share * (of.length - 1))]!.toFixed(1);
  return [
    `suggest, 10 steps × 40 products, 200 random days: median ${at(0.5)} ms, 95 % ${at(0.95)} ms, worst ${at(1)} ms; of the processor ${at(0.5, work)}, ${at(0.95, work)}, ${at(1, work)} ms` +
      ` (at most ${tried} days tried, fewest not proven in ${gaveUp}; ${Object.entries(answers)
        .map(([answer, n]) => `${answer} ${n}`)
        .join(', ')})`,
  ];
}
