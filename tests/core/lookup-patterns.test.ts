import { expect, it } from 'vitest';
import { patterns } from '../../dictionary/index.ts';
import { normalName } from '../../src/core/names/normal-form.ts';

const rules = patterns.map(({ id, match, not, needs, examples, counterexamples }) => {
  const [yes, no] = [new RegExp(match, 'u'), not ? new RegExp(not, 'u') : undefined];
  const has = (name: string) => !needs || needs.some((stretch) => name.includes(stretch));
  return { id, examples, counterexamples, has, takes: (name: string) => yes.test(name) && !no?.test(name) };
});

it.each(rules)('pattern $id takes its examples and leaves its counterexamples', (rule) => {
  const names = (list: string[]) => list.map(normalName);
  expect(names(rule.examples).filter((name) => !rule.takes(name))).toEqual([]);
  expect(names(rule.examples).filter((name) => !rule.has(name))).toEqual([]);
  expect(names(rule.counterexamples).filter((name) => rule.takes(name))).toEqual([]);
});

it('at least one example of every pattern reaches it past the patterns before it', () => {
  const unreached = rules.filter(
    (rule) => !rule.examples.some((name) => rules.find(({ takes }) => takes(normalName(name))) === rule),
  );
  expect(unreached.map(({ id }) => id)).toEqual([]);
});

it('every pattern has an id of its own', () => {
  expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
});
