import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { practice } from '../../../dictionary/practice.ts';
import sources from '../../../dictionary/sources.json' with { type: 'json' };
import type { Finding } from '../../../src/core/judge/finding.ts';
import { aspectRules, fitProduct } from '../../../src/core/judge/fit.ts';
import { washDay } from '../../../src/core/wash-day/add-up.ts';
import { rules } from '../../../src/core/wash-day/rules/index.ts';
import english from '../../../src/ui/words/en/rules.json' with { type: 'json' };
import { allowance } from '../hand-read.ts';
import { heads, randomDay } from '../random-day.ts';

const filesIn = (path: string) =>
  readdirSync(new URL(`../../../src/core/${path}`, import.meta.url), { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    .map(({ name }) => name.replace('.ts', ''));

describe('the set of rules', () => {
  it('is one question a file, named by it, each listed once', () => {
    const helpers = ['index', 'day', 'cadence', 'each-product'];
    const files = filesIn('wash-day/rules').filter((file) => !helpers.includes(file));
    const ofDays = rules.filter(({ of }) => of === 'day').map(({ id }) => id);
    expect(ofDays.toSorted()).toEqual(files.toSorted());
    expect(aspectRules.map(({ id }) => id).toSorted()).toEqual(filesIn('judge/rules').toSorted());
    const shared = rules.filter(({ of }) => of === 'product').map(({ id }) => id);
    expect(aspectRules.map(({ id }) => id)).toEqual(expect.arrayContaining(shared));
  });

  it('has a source for every threshold', () => {
    const { thresholds, thresholdSources } = practice.washDay;
    expect(Object.keys(thresholdSources).toSorted()).toEqual(Object.keys(thresholds).toSorted());
    for (const source of [
      ...Object.values(thresholdSources),
      ...practice.washDay.sources,
      ...practice.judge.sources,
      ...practice.matter.sources,
    ])
      expect(sources).toHaveProperty(source);
  });

  it('says nothing the catalogue lacks, and each rule has a short name', () => {
    const said = new Set<string>();
    const hear = (findings: readonly Finding[]) => {
      for (const { reason, condition, unknown } of findings)
        for (const each of [reason, condition, unknown]) if (each) said.add(each.key);
    };
    for (let seed = 1; seed <= 400; seed++) {
      const input = randomDay(seed, 2 + (seed % 6), 0);
      hear(washDay(input).findings);
      for (const { id, kind, use } of input.routine.steps)
        for (const head of heads)
          hear(
            fitProduct(
              { reading: input.readings.get(id), kind, use },
              { practice, ...(head && { head, allowance: allowance(head) }) },
            ),
          );
    }
    expect(said.size).toBeGreaterThan(40);
    for (const key of said) expect(english).toHaveProperty([key]);
    for (const { id } of rules) expect(english).toHaveProperty([`rules.short.${id}`]);
  });
});
