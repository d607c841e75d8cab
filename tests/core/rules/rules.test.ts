import { describe, expect, it } from 'vitest';
import type { Head } from '../../../src/core/hair/head.ts';
import { washDay } from '../../../src/core/wash-day/add-up.ts';
import {
  butter,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  type Hand,
  hand,
  head,
  laureth,
  logged,
  middling,
  type Plan,
  pvp,
  silicone,
  silk,
  softener,
  thirsty,
  unknown,
  water,
  wheat,
} from '../hand-read.ts';

const at = (part: Hand, percent: number): Hand => ({ ...part, share: { min: percent, max: percent } });
const mild = hand([water, at(glutamate, 12)]);
const strong = hand([water, at(laureth, 20)]);
const coWash = hand([water, fatty, at(softener, 2)]);
const soft = hand([water, glycerin, fatty, at(softener, 4), at(softener, 3)]);
const thin = hand([water, at(fatty, 3)]);
const plainGel = hand([water, glycerin]);
const wheatGel = hand([water, at(wheat, 1)]);
const silkGel = hand([water, at(silk, 1)]);
const every = (n: number) => ({ every: 'nth-wash' as const, n });
const turnOf = (plan: Plan, n: number, from: number): Plan => ({ ...plan, cadence: { ...every(n), from } });

const wash: Plan = { kind: 'cleanser', of: mild };
const conditioner: Plan = { kind: 'conditioner', of: soft };
const gel: Plan = { kind: 'gel', of: plainGel };
const treatment: Plan = { kind: 'protein-treatment', of: hand([water, at(silk, 3)]), cadence: every(4) };

const relaxed = head({
  thickness: 'coarse',
  porosity: 'high',
  scalpKind: 'dry',
  damage: { kinds: ['relaxer'], length: 'most', recent: 'weeks' },
});
const flaky = head({ ...middling, scalpKind: 'flaky' });
const fine = head({ thickness: 'fine', porosity: 'low', damage: { kinds: [] } });

/** What a rule says of a day: answers with their keys. */
const told = (rule: string, plans: Plan[], of?: Head, more: Parameters<typeof day>[2] = {}) =>
  washDay(day(plans, of, more))
    .findings.filter((finding) => finding.rule === rule)
    .map(({ answer, reason }) => `${answer} ${reason.key.split('.').at(-1)}`);

// Common practice throughout, unless a row says otherwise.
describe('what each rule says of a day', () => {
  it.each<[string, string, Plan[], Head | undefined, string[]]>([
    // too-much-protein
    ['too-much-protein', 'none is nothing to say', [wash, conditioner, gel], careful, []],
    [
      'too-much-protein',
      'within what the hair takes',
      [wash, conditioner, { kind: 'gel', of: silkGel }],
      middling,
      ['suits within'],
    ],
    [
      'too-much-protein',
      'doses add up',
      [wash, { kind: 'cream', of: wheatGel }, { kind: 'gel', of: silkGel }],
      middling,
      ['with-care all'],
    ],
    [
      'too-much-protein',
      'one alone is too much',
      [wash, { kind: 'gel', of: hand([water, at(wheat, 5)]) }],
      middling,
      ['does-not-suit one'],
    ],
    [
      'too-much-protein',
      'what is seldom counts seldom',
      [wash, conditioner, { kind: 'cream', of: wheatGel, cadence: every(4) }],
      middling,
      ['suits within'],
    ],
    [
      'too-much-protein',
      'hair not described',
      [wash, { kind: 'gel', of: hand([water, at(wheat, 3)]) }],
      undefined,
      ['cannot-tell hair-unknown'],
    ],
    [
      'too-much-protein',
      'a second layer of the same is no second product',
      [
        wash,
        { kind: 'cream', of: silkGel, product: 'same' },
        { kind: 'cream', of: silkGel, product: 'same' },
      ],
      middling,
      ['suits within'],
    ],
    // large-proteins-stay
    [
      'large-proteins-stay',
      'left on coarse, tight hair',
      [wash, conditioner, { kind: 'gel', of: wheatGel }],
      careful,
      ['with-care build-up'],
    ],
    [
      'large-proteins-stay',
      'rinsed off it does not stay',
      [wash, { kind: 'conditioner', of: wheatGel }],
      careful,
      [],
    ],
    [
      'large-proteins-stay',
      'small ones do not',
      [wash, conditioner, { kind: 'gel', of: silkGel }],
      careful,
      [],
    ],
    [
      'large-proteins-stay',
      'bleached hair has use for them',
      [wash, conditioner, { kind: 'gel', of: wheatGel }],
      thirsty,
      [],
    ],
    // protein-every-step
    [
      'protein-every-step',
      'all of three',
      [
        { kind: 'conditioner', of: wheatGel },
        { kind: 'cream', of: silkGel },
        { kind: 'gel', of: silkGel },
      ],
      thirsty,
      ['with-care all'],
    ],
    [
      'protein-every-step',
      'one is free',
      [wash, { kind: 'cream', of: silkGel }, { kind: 'gel', of: silkGel }],
      thirsty,
      [],
    ],
    // no-protein
    [
      'no-protein',
      'badly bleached and nothing rebuilds',
      [wash, conditioner, gel],
      thirsty,
      ['with-care missing'],
    ],
    [
      'no-protein',
      'a bond treatment does',
      [
        wash,
        conditioner,
        {
          kind: 'bond-treatment',
          of: hand([water, { name: 'Bis-Aminopropyl Diglycol Dimaleate', roles: ['bond-builder'] }]),
        },
      ],
      thirsty,
      [],
    ],
    ['no-protein', 'hair that does not ask for it', [wash, conditioner, gel], middling, []],
    // treatments-apart
    ['treatments-apart', 'monthly', [treatment, wash, conditioner], middling, ['suits apart']],
    [
      'treatments-apart',
      'each week on hair that takes it every second',
      [{ ...treatment, cadence: every(1) }, wash, conditioner],
      middling,
      ['with-care too-close'],
    ],
    [
      'treatments-apart',
      'far too often',
      [{ ...treatment, cadence: every(1) }, wash, conditioner],
      careful,
      ['does-not-suit too-close'],
    ],
    [
      'treatments-apart',
      'two on one day',
      [treatment, treatment, wash, conditioner],
      middling,
      ['does-not-suit same-day'],
    ],
    [
      'treatments-apart',
      'two that take turns, each time a fortnight apart',
      [turnOf(treatment, 4, 1), turnOf(treatment, 4, 3), wash, conditioner],
      middling,
      ['suits apart'],
    ],
    [
      'treatments-apart',
      'two that take turns week by week',
      [turnOf(treatment, 4, 4), turnOf(treatment, 4, 1), wash, conditioner],
      middling,
      ['with-care too-close'],
    ],
    [
      'treatments-apart',
      'two on the same turn',
      [turnOf(treatment, 4, 2), turnOf(treatment, 4, 2), wash, conditioner],
      middling,
      ['does-not-suit same-day'],
    ],
    [
      'treatments-apart',
      'bond care may come weekly',
      [{ kind: 'bond-treatment', of: soft }, wash, conditioner],
      middling,
      [],
    ],
    // treatment-follow-up
    [
      'treatment-follow-up',
      'conditioner after it',
      [treatment, wash, conditioner],
      middling,
      ['suits followed'],
    ],
    [
      'treatment-follow-up',
      'after the shampoo is as good',
      [wash, treatment, conditioner],
      middling,
      ['suits followed'],
    ],
    [
      'treatment-follow-up',
      'nothing soft follows',
      [treatment, wash, gel],
      middling,
      ['does-not-suit missing'],
    ],
    [
      'treatment-follow-up',
      'before it is not after it',
      [conditioner, treatment, wash],
      middling,
      ['does-not-suit missing'],
    ],
    [
      'treatment-follow-up',
      'what follows is strong itself',
      [treatment, wash, { kind: 'conditioner', of: hand([water, at(wheat, 4)]) }],
      middling,
      ['with-care with-protein'],
    ],
    [
      'treatment-follow-up',
      'only at some washes',
      [treatment, wash, { ...conditioner, cadence: every(3) }],
      middling,
      ['with-care not-each-time'],
    ],
    [
      'treatment-follow-up',
      'two that take turns: one of them at each wash',
      [turnOf(treatment, 3, 1), wash, turnOf(conditioner, 2, 1), turnOf(conditioner, 2, 2)],
      middling,
      ['suits followed'],
    ],
    [
      'treatment-follow-up',
      'three turns, of which one is nobody’s',
      [turnOf(treatment, 2, 1), wash, turnOf(conditioner, 3, 1), turnOf(conditioner, 3, 2)],
      middling,
      ['with-care not-each-time'],
    ],
    [
      'treatment-follow-up',
      'of two that take turns one holds much protein',
      [
        turnOf(treatment, 3, 1),
        wash,
        turnOf(conditioner, 2, 1),
        turnOf({ kind: 'conditioner', of: hand([water, at(wheat, 4)]) }, 2, 2),
      ],
      middling,
      ['with-care with-protein'],
    ],
    [
      'treatment-follow-up',
      'optional',
      [treatment, wash, { ...conditioner, optional: true }],
      middling,
      ['with-care optional'],
    ],
    [
      'treatment-follow-up',
      'its label was not read',
      [treatment, wash, { kind: 'conditioner', of: undefined }],
      middling,
      ['cannot-tell unread'],
    ],
    [
      'treatment-follow-up',
      'one that is left on needs none',
      [{ ...treatment, use: 'leave-on' }],
      middling,
      [],
    ],
    // harsh-cleansing
    ['harsh-cleansing', 'mild', [wash, conditioner], relaxed, ['suits mild-enough']],
    [
      'harsh-cleansing',
      'strong each week on relaxed hair',
      [{ kind: 'cleanser', of: strong }, conditioner],
      relaxed,
      ['does-not-suit too-harsh'],
    ],
    [
      'harsh-cleansing',
      'strong each week on sturdy hair',
      [{ kind: 'cleanser', of: strong }, conditioner],
      middling,
      ['with-care strong'],
    ],
    [
      'harsh-cleansing',
      'strong now and then beside a mild one',
      [wash, { kind: 'cleanser', of: strong, cadence: every(4) }, conditioner],
      middling,
      ['suits mild-enough'],
    ],
    // weak-cleansing
    [
      'weak-cleansing',
      'a co-wash for flakes',
      [{ kind: 'cleanser', of: coWash }, conditioner],
      flaky,
      ['with-care scalp'],
    ],
    [
      'weak-cleansing',
      'with a real shampoo beside it',
      [{ kind: 'cleanser', of: coWash }, wash, conditioner],
      flaky,
      [],
    ],
    // build-up
    [
      'build-up',
      'a co-wash lifts no silicone',
      [
        { kind: 'cleanser', of: coWash },
        { kind: 'cream', of: hand([water, silicone]) },
      ],
      middling,
      ['does-not-suit nothing-lifts'],
    ],
    [
      'build-up',
      'nor holding films',
      [
        { kind: 'cleanser', of: coWash },
        { kind: 'gel', of: hand([water, pvp]) },
      ],
      middling,
      ['with-care nothing-lifts'],
    ],
    [
      'build-up',
      'a mild wash lifts films',
      [wash, { kind: 'gel', of: hand([water, pvp]) }],
      middling,
      ['suits lifted'],
    ],
    [
      'build-up',
      'and leaves silicone for a wash now and then',
      [wash, { kind: 'cream', of: hand([water, silicone]) }],
      middling,
      ['suits now-and-then'],
    ],
    [
      'build-up',
      'a strong one lifts all',
      [
        { kind: 'cleanser', of: strong },
        { kind: 'cream', of: hand([water, silicone]) },
      ],
      middling,
      ['suits lifted'],
    ],
    // too-heavy
    [
      'too-heavy',
      'butter left on fine hair',
      [wash, { kind: 'cream', of: hand([water, at(butter, 15)]) }],
      fine,
      ['does-not-suit one'],
    ],
    [
      'too-heavy',
      'on coarse hair',
      [wash, { kind: 'cream', of: hand([water, at(butter, 15)]) }],
      careful,
      ['suits carried'],
    ],
    [
      'too-heavy',
      'before the wash it weighs nothing',
      [{ kind: 'pre-wash', of: hand([at(butter, 80)]) }, wash],
      fine,
      [],
    ],
    [
      'too-heavy',
      'hair not described',
      [wash, { kind: 'cream', of: hand([water, at(butter, 15)]) }],
      undefined,
      ['cannot-tell hair-unknown'],
    ],
    // too-little-moisture
    ['too-little-moisture', 'enough', [wash, conditioner], middling, ['suits enough']],
    ['too-little-moisture', 'still to add', [wash, gel], middling, ['with-care missing']],
    [
      'too-little-moisture',
      'too thin for dry coarse hair',
      [wash, { kind: 'conditioner', of: thin }],
      relaxed,
      ['does-not-suit thin'],
    ],
    [
      'too-little-moisture',
      'a mask once a month does not carry the other washes',
      [wash, { ...conditioner, cadence: every(4) }],
      middling,
      ['with-care missing'],
    ],
    [
      'too-little-moisture',
      'alcohol left on undoes it',
      [
        wash,
        conditioner,
        {
          kind: 'leave-in',
          of: hand([water, at({ name: 'Alcohol Denat.', roles: ['drying-alcohol'] }, 25)]),
        },
      ],
      relaxed,
      ['with-care dries'],
    ],
    // step-order
    [
      'step-order',
      'leave-in before the wash',
      [{ kind: 'leave-in', of: soft }, wash, conditioner],
      middling,
      ['does-not-suit washed-out'],
    ],
    [
      'step-order',
      'conditioner after the gel',
      [wash, gel, conditioner],
      middling,
      ['does-not-suit rinsed-out'],
    ],
    [
      'step-order',
      'oil before the wash is a pre-wash',
      [{ kind: 'oil', of: hand([at(butter, 50)]) }, wash, conditioner, gel],
      middling,
      [],
    ],
    // missing-step
    ['missing-step', 'no cleanser yet', [conditioner, gel], middling, ['with-care cleanser']],
    // hard-water
    [
      'hard-water',
      'a chelating agent takes it along',
      [{ kind: 'cleanser', of: hand([water, glutamate, { name: 'Disodium EDTA', roles: ['chelating'] }]) }],
      head({ ...middling, water: 'hard' }),
      ['suits chelated'],
    ],
    ['hard-water', 'else now and then', [wash], head({ ...middling, water: 'hard' }), ['suits now-and-then']],
    // too-little-read
    [
      'too-little-read',
      'unread',
      [wash, { kind: 'gel', of: hand([water, unknown, unknown]) }],
      middling,
      ['cannot-tell little'],
    ],
  ])('%s: %s', (rule, _, plans, of, says) => {
    expect(told(rule, plans, of)).toEqual(says);
  });

  it('treatments logged too close are said, and from when the next fits', () => {
    const log = [
      logged('2026-02-26', {}, ['protein-treatment']),
      logged('2026-02-20', {}, ['protein-treatment']),
    ];
    expect(told('treatments-apart', [treatment, wash, conditioner], middling, { log })).toEqual([
      'with-care logged-close',
      'suits apart',
    ]);
    expect(
      told('treatments-apart', [treatment, wash, conditioner], middling, { log: log.slice(0, 1) }),
    ).toContain('suits wait-until');
  });
});
