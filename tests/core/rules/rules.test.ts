import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { practice } from '../../../dictionary/practice.ts';
import sources from '../../../dictionary/sources.json' with { type: 'json' };
import type { Head } from '../../../src/core/hair/head.ts';
import { washDay } from '../../../src/core/wash-day/add-up.ts';
import { rules } from '../../../src/core/wash-day/rules/index.ts';
import english from '../../../src/ui/words/en/rules.json' with { type: 'json' };
import {
  butter,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  hand,
  head,
  laureth,
  logged,
  middling,
  oatExtract,
  type Plan,
  peptide,
  pvp,
  silicone,
  silk,
  sparing,
  thirsty,
  unknown,
  water,
  wheat,
} from '../hand-read.ts';

const none = hand([water, glycerin]);
const moist = hand([water, glycerin, fatty]);
const small = hand([water, glycerin, silk]);
const large = hand([water, glycerin, wheat]);
const maybe = hand([water, oatExtract]);
const unread = hand([water, unknown, unknown]);
const strongWash = hand([water, laureth]);
const mildWash = hand([water, glutamate]);
const noWash = hand([water, fatty]);
const filmStrong = hand([water, silicone]);
const filmMild = hand([water, pvp]);
const rich = hand([water, butter]);
const strictly = (n: number) => ({ every: 'nth-wash' as const, n });

/** What a rule says of a day: answers with their keys, and the steps that decided the first. */
function told(rule: string, plans: Plan[], of?: Head, more: Parameters<typeof day>[2] = {}) {
  const found = washDay(day(plans, of, more)).findings.filter((finding) => finding.rule === rule);
  return {
    says: found.map(({ answer, reason }) => `${answer} ${reason.key.split('.').at(-1)}`),
    steps: found[0]?.steps,
  };
}

describe('protein in every step', () => {
  it.each<[string, Plan[], string[]]>([
    [
      'all hold it',
      [
        { kind: 'conditioner', of: small },
        { kind: 'gel', of: large },
      ],
      ['does-not-suit all'],
    ],
    [
      'one is free',
      [
        { kind: 'conditioner', of: none },
        { kind: 'gel', of: large },
      ],
      ['suits some-free'],
    ],
    [
      'one may be free',
      [
        { kind: 'conditioner', of: maybe },
        { kind: 'gel', of: large },
      ],
      ['cannot-tell maybe'],
    ],
    [
      'one is unread',
      [
        { kind: 'conditioner', of: undefined },
        { kind: 'gel', of: large },
      ],
      ['cannot-tell maybe'],
    ],
    [
      'none holds it',
      [
        { kind: 'conditioner', of: none },
        { kind: 'gel', of: none },
      ],
      [],
    ],
    ['a single step', [{ kind: 'gel', of: large }], []],
    [
      'an empty step does not count',
      [
        { kind: 'gel', of: large },
        { kind: 'cream', empty: true },
      ],
      [],
    ],
    [
      'peptides are no dose',
      [
        { kind: 'conditioner', of: hand([water, peptide]) },
        { kind: 'gel', of: large },
      ],
      ['suits some-free'],
    ],
  ])('%s', (_, plans, says) => {
    expect(told('protein-every-step', plans, middling).says).toEqual(says);
  });
});

describe('leave-ons with protein against the allowance', () => {
  it.each<[string, Plan[], Head | undefined, string[]]>([
    ['one of one', [{ kind: 'gel', of: small }], middling, ['suits within']],
    [
      'two of one',
      [
        { kind: 'cream', of: small },
        { kind: 'gel', of: small },
      ],
      middling,
      ['does-not-suit too-many'],
    ],
    [
      'two of two',
      [
        { kind: 'cream', of: small },
        { kind: 'gel', of: small },
      ],
      thirsty,
      ['suits within'],
    ],
    ['one of none', [{ kind: 'gel', of: small }], careful, ['does-not-suit too-many']],
    [
      'one sure, one possible, of one',
      [
        { kind: 'cream', of: small },
        { kind: 'gel', of: maybe },
      ],
      middling,
      ['cannot-tell maybe-too-many'],
    ],
    [
      'one sure, one unread, of one',
      [
        { kind: 'cream', of: small },
        { kind: 'gel', of: unread },
      ],
      middling,
      ['cannot-tell maybe-too-many'],
    ],
    [
      'rinse-offs do not count',
      [
        { kind: 'conditioner', of: small },
        { kind: 'gel', of: small },
      ],
      middling,
      ['suits within'],
    ],
    ['hair not described: one', [{ kind: 'gel', of: small }], undefined, ['cannot-tell hair-unknown']],
    [
      'hair not described: more than any hair has room for',
      ['leave-in', 'cream', 'gel'].map((kind) => ({ kind: kind as 'gel', of: small })),
      undefined,
      ['does-not-suit too-many'],
    ],
    ['protein-free', [{ kind: 'gel', of: none }], careful, []],
  ])('%s', (_, plans, of, says) => {
    expect(told('leave-on-proteins', plans, of).says).toEqual(says);
  });
});

describe('products with protein against the allowance', () => {
  const three: Plan[] = [
    { kind: 'cleanser', of: small },
    { kind: 'conditioner', of: small },
    { kind: 'gel', of: small },
  ];
  it.each<[string, Plan[], Head | undefined, string[]]>([
    ['three of two', three, middling, ['does-not-suit too-many']],
    ['three of four', three, thirsty, ['suits within']],
    ['one of one', [{ kind: 'conditioner', of: small }], careful, ['suits within']],
    [
      'one sure and one possible of one',
      [
        { kind: 'conditioner', of: small },
        { kind: 'cleanser', of: maybe },
      ],
      careful,
      ['cannot-tell maybe-too-many'],
    ],
  ])('%s', (_, plans, of, says) => {
    expect(told('protein-products', plans, of).says).toEqual(says);
  });
});

describe('no protein at all', () => {
  it.each<[string, Plan[], Head | undefined, string[]]>([
    ['fine, porous, bleached', [{ kind: 'gel', of: none }], thirsty, ['does-not-suit missing']],
    ['coarse, low porosity', [{ kind: 'gel', of: none }], careful, ['suits not-missed']],
    [
      'porous only',
      [{ kind: 'gel', of: none }],
      head({ thickness: 'medium', porosity: 'high' }),
      ['does-not-suit missing'],
    ],
    ['medium and undamaged', [{ kind: 'gel', of: none }], middling, ['suits not-missed']],
    [
      'damage not told',
      [{ kind: 'gel', of: none }],
      head({ thickness: 'medium', porosity: 'medium' }),
      ['cannot-tell hair-unknown'],
    ],
    ['some may hold it', [{ kind: 'gel', of: maybe }], thirsty, ['cannot-tell maybe']],
    ['one holds it', [{ kind: 'gel', of: small }], thirsty, []],
    [
      'overruled to rarely',
      [{ kind: 'gel', of: none }],
      { ...thirsty, allowanceByHand: 'rarely' },
      ['suits not-missed'],
    ],
    ['nobody described the hair', [{ kind: 'gel', of: none }], undefined, ['cannot-tell hair-unknown']],
  ])('%s', (_, plans, of, says) => {
    expect(told('no-protein', plans, of).says).toEqual(says);
  });
});

describe('a strengthening treatment and its deep conditioner', () => {
  const treat: Plan = { kind: 'bond-treatment', of: small };
  it.each<[string, Plan[], string[]]>([
    ['followed, protein-free', [treat, { kind: 'deep-conditioner', of: moist }], ['suits followed']],
    ['not followed', [treat, { kind: 'conditioner', of: moist }], ['does-not-suit missing']],
    [
      'before it is not after it',
      [{ kind: 'deep-conditioner', of: moist }, treat],
      ['does-not-suit missing'],
    ],
    [
      'followed by one with protein',
      [treat, { kind: 'deep-conditioner', of: small }],
      ['does-not-suit with-protein'],
    ],
    [
      'followed by one that may hold protein',
      [treat, { kind: 'deep-conditioner', of: maybe }],
      ['cannot-tell maybe-protein'],
    ],
    [
      'followed by an optional one',
      [treat, { kind: 'deep-conditioner', of: moist, optional: true }],
      ['cannot-tell optional'],
    ],
    [
      'each second time only',
      [treat, { kind: 'deep-conditioner', of: moist, cadence: strictly(2) }],
      ['does-not-suit not-each-time'],
    ],
    [
      'both each fourth wash',
      [
        { ...treat, cadence: strictly(4) },
        { kind: 'deep-conditioner', of: moist, cadence: strictly(4) },
      ],
      ['suits followed'],
    ],
    [
      'treatment each fourth, conditioner each second',
      [
        { ...treat, cadence: strictly(4) },
        { kind: 'deep-conditioner', of: moist, cadence: strictly(2) },
      ],
      ['suits followed'],
    ],
    ['the step stands empty', [treat, { kind: 'deep-conditioner', empty: true }], ['does-not-suit missing']],
    ['no treatment', [{ kind: 'deep-conditioner', of: small }], []],
    [
      'two treatments, two answers',
      [treat, { kind: 'deep-conditioner', of: moist }, { kind: 'protein-treatment', of: small }],
      ['does-not-suit missing', 'suits followed'],
    ],
  ])('%s', (_, plans, says) => {
    expect(told('treatment-follow-up', plans, middling).says).toEqual(says);
  });
});

describe('a strengthening treatment is shampooed out', () => {
  it.each<[string, Plan[], string[]]>([
    [
      'cleanser after it',
      [
        { kind: 'bond-treatment', of: none },
        { kind: 'cleanser', of: mildWash },
      ],
      ['suits washed'],
    ],
    [
      'cleanser only before it',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'bond-treatment', of: none },
      ],
      ['does-not-suit missing'],
    ],
    [
      'cleanser each second wash',
      [
        { kind: 'bond-treatment', of: none },
        { kind: 'cleanser', of: mildWash, cadence: strictly(2) },
      ],
      ['does-not-suit missing'],
    ],
  ])('%s', (_, plans, says) => {
    expect(told('treatment-shampooed-out', plans, middling).says).toEqual(says);
  });
});

describe('treatments apart', () => {
  const every = (cadence: Plan['cadence']): Plan[] => [
    { kind: 'protein-treatment', of: small, cadence: cadence! },
  ];
  it.each<[string, Plan[], Head | undefined, Parameters<typeof day>[2], string[]]>([
    [
      'each wash, a week apart, 14 days allowed',
      every({ every: 'wash' }),
      middling,
      {},
      ['does-not-suit too-close'],
    ],
    ['each second wash, 14 days allowed', every(strictly(2)), middling, {}, ['suits apart']],
    ['each week where once a week is allowed', every({ every: 'wash' }), thirsty, {}, ['suits apart']],
    ['every 10 days falls on the 14th', every({ every: 'days', n: 10 }), middling, {}, ['suits apart']],
    [
      'each wash, every third day',
      every({ every: 'wash' }),
      thirsty,
      { washEvery: 3 },
      ['does-not-suit too-close'],
    ],
    [
      'two on one day',
      [...every(strictly(8)), { kind: 'bond-treatment', of: none, cadence: strictly(8) }],
      thirsty,
      {},
      ['does-not-suit same-day'],
    ],
    ['hair not described, each wash', every({ every: 'wash' }), undefined, {}, ['cannot-tell hair-unknown']],
    [
      'hair not described, twice a week',
      every({ every: 'wash' }),
      undefined,
      { washEvery: 3 },
      ['does-not-suit too-close'],
    ],
    ['hair not described, each fifth week', every(strictly(5)), undefined, {}, ['suits apart']],
    [
      'a treatment five days ago',
      every(strictly(2)),
      middling,
      { log: [logged('2026-02-24', {}, ['protein-treatment'])] },
      ['suits apart', 'suits wait-until'],
    ],
    [
      'the last two were close',
      every(strictly(2)),
      middling,
      {
        log: [logged('2026-02-24', {}, ['protein-treatment']), logged('2026-02-17', {}, ['bond-treatment'])],
      },
      ['does-not-suit logged-close', 'suits apart'],
    ],
    [
      'they were close long ago',
      every(strictly(2)),
      middling,
      {
        log: [
          logged('2026-01-08', {}, ['protein-treatment']),
          logged('2026-01-01', {}, ['protein-treatment']),
        ],
      },
      ['suits apart'],
    ],
    [
      'on another head',
      every(strictly(2)),
      middling,
      { log: [logged('2026-02-24', { head: 'someone else' }, ['protein-treatment'])] },
      ['suits apart'],
    ],
  ])('%s', (_, plans, of, more, says) => {
    expect(told('treatments-apart', plans, of, more).says).toEqual(says);
  });
});

describe('a moisture step', () => {
  it.each<[string, Plan[], string[]]>([
    ['a conditioner with it', [{ kind: 'conditioner', of: moist }], ['suits there']],
    ['only a gel with it', [{ kind: 'gel', of: moist }], ['does-not-suit missing']],
    ['a leave-in that could not be read', [{ kind: 'leave-in', of: undefined }], ['cannot-tell maybe']],
    [
      'a conditioner with a trace of it',
      [{ kind: 'conditioner', of: hand([water, { ...glycerin, share: { min: 0, max: 1 } }]) }],
      ['does-not-suit missing'],
    ],
    ['nothing', [], ['does-not-suit missing']],
  ])('%s', (_, plans, says) => {
    expect(told('no-moisture', plans, middling).says).toEqual(says);
  });
});

describe('film formers against cleansing strength', () => {
  it.each<[string, Plan[], string[]]>([
    [
      'strong film, strong cleanser',
      [
        { kind: 'cleanser', of: strongWash },
        { kind: 'gel', of: filmStrong },
      ],
      ['suits lifted'],
    ],
    [
      'strong film, mild cleanser',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'gel', of: filmStrong },
      ],
      ['does-not-suit too-mild'],
    ],
    [
      'mild film, mild cleanser',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'gel', of: filmMild },
      ],
      ['suits lifted'],
    ],
    [
      'mild film, a cleanser that does not lift',
      [
        { kind: 'cleanser', of: noWash },
        { kind: 'gel', of: filmMild },
      ],
      ['does-not-suit does-not-lift'],
    ],
    ['film and no cleanser', [{ kind: 'gel', of: filmStrong }], ['does-not-suit no-cleanser']],
    [
      'film and an unread cleanser',
      [
        { kind: 'cleanser', of: undefined },
        { kind: 'gel', of: filmStrong },
      ],
      ['cannot-tell cleanser-unread'],
    ],
    [
      'a strong cleanser now and then is enough',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'cleanser', of: strongWash, cadence: strictly(4) },
        { kind: 'gel', of: filmStrong },
      ],
      ['suits lifted'],
    ],
    [
      'a trace of a strong film, mild cleanser',
      [
        { kind: 'cleanser', of: mildWash },
        { kind: 'gel', of: hand([water, { ...silicone, share: { min: 0, max: 1 } }]) },
      ],
      ['suits lifted'],
    ],
    ['no film', [{ kind: 'gel', of: none }], []],
  ])('%s', (_, plans, says) => {
    expect(told('film-formers', plans, middling).says).toEqual(says);
  });
});

describe('the weight of leave-ons', () => {
  const richOnes = (n: number, kind: Plan['kind'] = 'cream'): Plan[] =>
    Array.from({ length: n }, () => ({ kind, of: rich }));
  it.each<[string, Plan[], Head | undefined, string[]]>([
    ['one on fine hair', richOnes(1), thirsty, ['suits carried']],
    ['two on fine hair', richOnes(2), thirsty, ['does-not-suit too-heavy']],
    ['two on medium hair', richOnes(2), middling, ['suits carried']],
    ['three rinsed out of fine hair', richOnes(3, 'deep-conditioner'), thirsty, []],
    [
      'one and an unread one on fine hair',
      [...richOnes(1), { kind: 'gel', of: undefined }],
      thirsty,
      ['cannot-tell maybe'],
    ],
    ['two, thickness not told', richOnes(2), head({ porosity: 'low' }), ['cannot-tell hair-unknown']],
    ['four, thickness not told', richOnes(4), head({ porosity: 'low' }), ['does-not-suit too-heavy']],
  ])('%s', (_, plans, of, says) => {
    expect(told('leave-on-weight', plans, of).says).toEqual(says);
  });
});

// Rules of the trade, each `common practice`: no published source was found for any of them.
describe('trade facts (common practice)', () => {
  it('a strengthening treatment comes about once a week at most: no allowance lets it come more often', () => {
    const days = Object.values(practice.allowance.levels).map((level) => level.daysBetweenTreatments);
    expect(Math.min(...days, practice.washDay.thresholds.treatmentDays)).toBeGreaterThanOrEqual(7);
  });
  it('it is shampooed out and followed by a protein-free deep conditioner', () => {
    const right: Plan[] = [
      { kind: 'bond-treatment', of: small, cadence: strictly(2) },
      { kind: 'cleanser', of: strongWash },
      { kind: 'deep-conditioner', of: moist },
    ];
    const findings = washDay(day(right, middling)).findings.filter(({ rule }) =>
      rule.startsWith('treatment'),
    );
    expect(findings.map(({ answer }) => answer)).toEqual(['suits', 'suits', 'suits']);
  });
  it('not every product of a wash day should hold protein', () => {
    expect(
      told(
        'protein-every-step',
        [
          { kind: 'conditioner', of: small },
          { kind: 'gel', of: small },
        ],
        thirsty,
      ).says,
    ).toEqual(['does-not-suit all']);
  });
  it('of cream and gel, one with protein is enough unless the hair is very damaged', () => {
    const both: Plan[] = [
      { kind: 'cream', of: small },
      { kind: 'gel', of: small },
    ];
    for (const of of [middling, sparing, careful])
      expect(told('leave-on-proteins', both, of).says).toEqual(['does-not-suit too-many']);
    expect(told('leave-on-proteins', both, thirsty).says).toEqual(['suits within']);
    expect(
      told(
        'leave-on-proteins',
        [
          { kind: 'cream', of: none },
          { kind: 'gel', of: small },
        ],
        middling,
      ).says,
    ).toEqual(['suits within']);
  });
  it('a foam at the roots is optional and counts like any leave-on', () => {
    const plans: Plan[] = [
      { kind: 'foam', of: small, optional: true },
      { kind: 'gel', of: small },
    ];
    expect(told('leave-on-proteins', plans, middling)).toEqual({
      says: ['does-not-suit too-many'],
      steps: ['s1', 's2'],
    });
  });
  it('a second thin layer of the same gel is not a second product', () => {
    const layers: Plan[] = [
      { kind: 'gel', of: small, product: 'gel' },
      { kind: 'gel', of: small, product: 'gel', grams: 1 },
    ];
    expect(told('leave-on-proteins', layers, middling).says).toEqual(['suits within']);
    expect(told('protein-every-step', layers, middling).says).toEqual([]);
  });
  it('a product may hold protein and still moisturise', () => {
    expect(told('protein-dose', [{ kind: 'cream', of: small }], middling).says).toEqual([
      'suits with-moisture',
    ]);
    expect(told('no-moisture', [{ kind: 'cream', of: small }], middling).says).toEqual(['suits there']);
  });
});

describe('the set of rules', () => {
  const files = readdirSync(new URL('../../../src/core/wash-day/rules', import.meta.url));
  const helpers = ['index.ts', 'day.ts', 'traits.ts', 'cadence.ts', 'count-protein.ts'];
  it('is one rule a file, named by it, each listed once', () => {
    const ids = files.filter((file) => !helpers.includes(file)).map((file) => file.replace('.ts', ''));
    expect(rules.map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
  });
  it('has a source for every threshold', () => {
    const { thresholds, thresholdSources } = practice.washDay;
    expect(Object.keys(thresholdSources).toSorted()).toEqual(Object.keys(thresholds).toSorted());
    for (const source of [...Object.values(thresholdSources), ...practice.washDay.sources])
      expect(sources).toHaveProperty(source);
  });
  it('says nothing the catalogue lacks', () => {
    const heads = [careful, sparing, middling, thirsty, undefined];
    const labels = [
      none,
      moist,
      small,
      large,
      maybe,
      unread,
      undefined,
      filmStrong,
      filmMild,
      rich,
      strongWash,
      mildWash,
    ];
    const kinds: Plan['kind'][] = ['bond-treatment', 'cleanser', 'deep-conditioner', 'cream', 'gel'];
    const keys = new Set<string>();
    for (const of of heads)
      for (const first of labels)
        for (const second of labels)
          for (const { reason, unknown: not } of washDay(
            day(
              kinds.map((kind, index) => ({ kind, of: index % 2 ? first : second })),
              of,
            ),
          ).findings)
            for (const said of [reason, not]) if (said) keys.add(said.key);
    expect(keys.size).toBeGreaterThan(25);
    for (const key of keys) expect(english).toHaveProperty([key]);
  });
});
