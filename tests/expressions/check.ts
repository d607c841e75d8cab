// What a checker says of each expression. It takes seconds for one, so that its answers are kept by the letters asked about.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { root } from '../run/steps.ts';
import type { Expression } from './collect.ts';

/** `safe` in time that grows with the letters; else how it grows, and letters to repeat that make it grow. */
export type Verdict = 'safe' | { grows: string; attack?: [prefix: string, pump: string, suffix: string] };

const file = join(root, 'tests/expressions/checked.jsonl');
const keyOf = ({ source, flags }: Expression) =>
  createHash('sha256').update(`${source}/${flags}`).digest('hex').slice(0, 16);

type Checked = {
  status: 'safe' | 'vulnerable' | 'unknown';
  complexity?: { summary: string };
  attack?: { pumps: { prefix: string; pump: string }[]; suffix: string };
};

function checker() {
  const require = createRequire(import.meta.url);
  const { check } = require('recheck') as {
    check(source: string, flags: string, options: object): Promise<Checked>;
  };
  return check;
}

async function ask({ source, flags }: Expression): Promise<Verdict> {
  const check = checker();
  const { status, complexity, attack } = await check(source, flags, { timeout: 8000 });
  if (status === 'safe') return 'safe';
  const [first] = attack?.pumps ?? [];
  return {
    grows: complexity?.summary.replace(/ \(.*/, '') ?? 'unknown',
    ...(first && attack && { attack: [first.prefix, first.pump, attack.suffix] }),
  };
}

/** The verdict on each expression; those that were never asked about are asked about, and kept at once. */
export async function verdicts(all: Expression[]): Promise<Map<Expression, Verdict>> {
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : [];
  const kept: Record<string, Verdict> = Object.fromEntries(lines.map((line) => JSON.parse(line)));
  const keys = new Set(all.map(keyOf));
  // A line each, so that two branches' answers are merged by taking both.
  const keep = () => {
    const sorted = Object.entries(kept).filter(([key]) => keys.has(key));
    sorted.sort(([a], [b]) => (a < b ? -1 : 1));
    writeFileSync(file, sorted.map((each) => `${JSON.stringify(each)}\n`).join(''));
  };
  const told = new Map<Expression, Verdict>();
  for (const each of all) {
    const key = keyOf(each);
    if (!(key in kept)) {
      kept[key] = await ask(each);
      keep();
    }
    told.set(each, kept[key]!);
  }
  if (Object.keys(kept).some((key) => !keys.has(key))) keep();
  return told;
}
