// No letters of a page may hold the program up: what a checker of expressions says of every one of ours.
import { expect, it } from 'vitest';
import { spent } from '../spent.ts';
import { type Verdict, verdicts } from './check.ts';
import { type Expression, expressions } from './collect.ts';

/** Letters that an expression which grows with a power is tried on at most, by where it stands, and what sees to it. */
const bounds: [where: RegExp, letters: number, by: string][] = [
  [/^patterns\.json/, 300, 'longestPattern in core/names/lookup.ts'],
  [/^src\/core\/names\//, 800, 'longestName in core/names/lookup.ts'],
  [/^src\/find\//, 1000, 'lines and names are cut in find/; npm run bench growth'],
  [/^src\/core\/(label|reading)\//, 1000, 'longestText and the length of a name; npm run bench growth'],
  [/^src\/core\/(amounts|judge|product)\//, 300, 'names, titles and addresses as the schemas bound them'],
  [/^src\/page\/shelf\//, 2000, 'the head of an answer alone'],
  [/^src\/ui\/parts\/controls\/field\.tsx/, 300, 'what a person types'],
];
const mostTime = 30; // ms of the processor

const all = expressions();
const told = await verdicts(all);

const stretched = ([prefix, pump, suffix]: [string, string, string], letters: number) =>
  (prefix + pump.repeat(Math.ceil(letters / Math.max(1, pump.length)))).slice(0, letters - suffix.length) +
  suffix;
const boundOf = ({ where }: Expression) => bounds.find(([place]) => place.test(where))?.[1];
const grows = [...told].filter((each): each is [Expression, Exclude<Verdict, 'safe'>] => each[1] !== 'safe');
const said = ([{ where, source }]: [Expression, Verdict]) => `${where}: ${source.slice(0, 200)}`;

it('none grows exponentially', () => {
  expect(all.length).toBeGreaterThan(400);
  expect(grows.filter(([, { grows: how }]) => how === 'exponential').map(said)).toEqual([]);
});

it('those that grow with a power, or were not made out, are tried on bounded letters only', () => {
  expect(grows.filter(([each]) => boundOf(each) === undefined).map(said)).toEqual([]);
});

it('and take no time on the letters that make them grow, at that bound', () => {
  const attacks = grows.flatMap(([, { attack }]) => (attack ? [attack] : []));
  const slow: string[] = [];
  for (const each of grows) {
    const [{ source, flags }] = each;
    const expression = new RegExp(source, flags.replace(/[gy]/g, ''));
    // Those found for others too: what was not made out of one may be known of its like.
    for (const attack of attacks) {
      const text = stretched(attack, boundOf(each[0]) ?? 300);
      const test = () => expression.test(text);
      if (spent(test) > mostTime && spent(test) > mostTime)
        slow.push(`${said(each)} on ${text.slice(0, 60)}`);
    }
  }
  expect(attacks.length).toBeGreaterThan(20);
  expect(slow).toEqual([]);
}, 120_000);
