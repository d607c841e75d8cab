import { describe, expect, it } from 'vitest';
import { dayFelt } from '../../src/core/hair/day-feel.ts';
import { tallyOf } from '../../src/core/hair/tally.ts';
import { weatherRemark } from '../../src/core/hair/weather.ts';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import type { Feel } from '../../src/core/wash-day/routine.ts';
import { dayStep } from '../../src/core/wash-day/rules/day.ts';
import { butter, day, fatty, glycerin, hand, logged, practice, silk, water, wheat } from './hand-read.ts';

// Common practice: soft, not dry, defined and springy is balanced; stiff, rough, brittle is too much protein or
// too little moisture; limp the reverse.
it.each<[string, Feel, string]>([
  ['soft, springy, defined', { soft: 2, springy: 1, defined: 1, dry: 0 }, 'balanced'],
  ['soft but dry', { soft: 1, dry: 2 }, 'neither'],
  ['soft but greasy', { soft: 1, dry: -1 }, 'neither'],
  ['soft but frizzy', { soft: 1, defined: -1 }, 'neither'],
  ['rough', { soft: -1 }, 'stiff'],
  ['brittle', { elastic: -2, soft: 0 }, 'stiff'],
  ['limp', { springy: -1 }, 'limp'],
  ['limp and rough is neither alone', { springy: -1, soft: -1, elastic: -1 }, 'neither'],
  ['in the middle', { soft: 0, springy: 0 }, 'neither'],
  ['not told', {}, 'untold'],
])('%s', (_, feel, felt) => {
  expect(dayFelt(feel, practice.allowance.feel)).toBe(felt);
});

describe('what the good days share', () => {
  const labels = {
    silk: hand([water, glycerin, silk]),
    wheat: hand([water, wheat, butter]),
    plain: hand([water, fatty]),
  };
  const entry = (date: string, label: keyof typeof labels | 'unread' | undefined, feel: Feel) => {
    const one = logged(date, { feel }, ['gel']);
    return {
      ...one,
      done: { ...one.done, steps: one.done.steps.map((step) => ({ ...step, ...(label && { label }) })) },
    };
  };
  const good: Feel = { soft: 1, springy: 1 };
  const stiff: Feel = { soft: -1 };
  const readingOf = (label: string) => labels[label as keyof typeof labels];
  const days = [
    entry('2026-01-01', 'silk', good),
    entry('2026-01-08', 'silk', good),
    entry('2026-01-15', 'wheat', stiff),
    entry('2026-01-22', 'plain', good),
  ];

  it('counts, for good days and others apart', () => {
    const tally = tallyOf(days, readingOf, practice)!;
    expect(tally).toMatchObject({ days: 4, good: 3 });
    const row = (what: string) => tally.rows.find((one) => one.what === what);
    expect(row('small-protein')).toMatchObject({ good: 2, others: 0 });
    expect(row('large-protein')).toMatchObject({ good: 0, others: 1 });
    // How much a day brings: each day stands in one of the four steps.
    const stepsOf = (what: string) => tally.rows.filter((each) => each.what.startsWith(`${what}.`));
    for (const what of ['protein', 'moisture']) {
      expect(stepsOf(what)).toHaveLength(4);
      expect(stepsOf(what).reduce((all, { good }) => all + good, 0)).toBe(3);
      expect(stepsOf(what).reduce((all, { others }) => all + others, 0)).toBe(1);
    }
    expect(row('protein.none')).toMatchObject({ good: 1, others: 0 });
    const { step } = washDay(day([{ kind: 'gel', of: labels.wheat }])).stays.day.protein;
    expect(step).not.toBe('none');
    expect(row(`protein.${step}`)).toMatchObject({ others: 1 });
    expect(row('humectants-in-front')).toMatchObject({ good: 2, others: 0 });
    expect(row('rich-leave-on')).toMatchObject({ good: 1, others: 1 });
  });
  it('says nothing below three told days', () => {
    expect(tallyOf(days.slice(0, 2), readingOf, practice)).toBeUndefined();
    expect(
      tallyOf([...days.slice(0, 2), entry('2026-02-01', 'silk', {})], readingOf, practice),
    ).toBeUndefined();
    expect(
      tallyOf([...days.slice(0, 2), entry('2026-02-01', undefined, good)], readingOf, practice),
    ).toBeUndefined();
  });
});

describe('humectants and the dew point (common practice)', () => {
  const step = (reading: ReturnType<typeof hand>, kind: 'gel' | 'conditioner' = 'gel') =>
    dayStep(
      {
        id: 's',
        kind,
        use: kind === 'gel' ? 'leave-on' : 'rinse-off',
        product: 'p',
        optional: false,
        cadence: { every: 'wash' },
      },
      reading,
      practice,
    );
  const humectant = step(hand([water, glycerin]));
  it.each([
    ['very dry air', 5, 30, humectant, 'routine.weather.dry'],
    ['very humid air', 28, 80, humectant, 'routine.weather.humid'],
    ['mild air', 20, 50, humectant, undefined],
    ['no humectant in front', 28, 80, step(hand([water, fatty])), undefined],
    ['rinsed out', 28, 80, step(hand([water, glycerin]), 'conditioner'), undefined],
    ['a humidity that cannot be', 28, 180, humectant, undefined],
  ] as const)('%s', (_, celsius, humidity, on, key) => {
    expect(weatherRemark({ celsius, humidity }, [on], practice.washDay)?.key).toBe(key);
  });
});
