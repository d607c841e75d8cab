import { ms } from '../measure.ts';
import { budgets } from './budgets.ts';
import { pairsInNode } from './in-node.ts';
import { pairsInPage } from './in-page.ts';
import { type Pair, ratioOf } from './pairs.ts';

/** What is said of a pair, and whether it is past its budget; a pair without one is past it, too. */
export function held(pair: Pair): { line: string; failed: boolean } {
  const { ratio, from, to } = ratioOf(pair);
  const { most = 0, margin = 1 } = budgets[pair.name] ?? {};
  const failed = !(ratio <= most * margin);
  const short = (value: number) => Number(value.toPrecision(3));
  const word = failed ? 'FAIL' : ratio > most ? 'over' : 'ok  ';
  return {
    failed,
    line: `${word} ${pair.name}: ${short(ratio)} (rounds ${short(from)} to ${short(to)}; ${ms(Math.min(...pair.ours))} to ${ms(Math.min(...pair.beside))}), aim ${most}, fails above ${short(most * margin)}`,
  };
}

/** Measures everything that has a budget, says how each stands, and how many are past theirs. */
export async function checkBudgets(say: (line: string) => void): Promise<number> {
  const missing = new Set(Object.keys(budgets));
  let past = 0;
  for (const measure of [pairsInNode, pairsInPage])
    for (const pair of await measure()) {
      const { line, failed } = held(pair);
      say(line);
      missing.delete(pair.name);
      if (failed) past++;
    }
  for (const name of missing) say(`FAIL ${name}: not measured`);
  return past + missing.size;
}
