import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalendarInput, plannedDays } from '../../src/core/wash-day/calendar.ts';
import { addDays, daysBetween } from '../../src/core/wash-day/days.ts';
import type { Cadence, LogEntry } from '../../src/core/wash-day/routine.ts';
import {
  allowance,
  careful,
  day,
  logged,
  middling,
  type Plan,
  practice,
  thirsty,
  today,
} from './hand-read.ts';

const treatment = (cadence: Cadence): Plan => ({ kind: 'protein-treatment', cadence });
const base: Plan[] = [
  { kind: 'cleanser' },
  { kind: 'deep-conditioner', cadence: { every: 'nth-wash', n: 4 } },
  { kind: 'gel' },
];

function plan(plans: Plan[], more: Partial<CalendarInput> & { washEvery?: number } = {}) {
  const { routine } = day(plans, undefined, more.washEvery ? { washEvery: more.washEvery } : {});
  return plannedDays({
    routine,
    log: [],
    allowance: allowance(middling),
    practice,
    from: today,
    days: 28,
    today,
    ...more,
  });
}

describe('wash days by cadence', () => {
  it('counts on from today where nothing is logged', () => {
    expect(plan(base).map(({ date }) => date)).toEqual([
      '2026-03-01',
      '2026-03-08',
      '2026-03-15',
      '2026-03-22',
    ]);
  });
  it('counts on from the last wash logged', () => {
    expect(plan(base, { log: [logged('2026-02-26')] })[0]!.date).toBe('2026-03-05');
  });
  it('is today for who is late', () => {
    expect(plan(base, { log: [logged('2026-01-26')] })[0]!.date).toBe(today);
  });
  it('shows a later month in the same rhythm', () => {
    expect(plan(base, { from: '2026-04-01', days: 30 }).map(({ date }) => date)).toEqual([
      '2026-04-05',
      '2026-04-12',
      '2026-04-19',
      '2026-04-26',
    ]);
  });
  it('does each n-th step each n-th wash, counted from the log', () => {
    const steps = plan(base, { log: [logged('2026-02-22', {}, ['deep-conditioner'])], days: 60 });
    expect(steps.map(({ steps }) => steps.includes('s2'))).toEqual([
      false,
      false,
      false,
      true,
      false,
      false,
      false,
      true,
      false,
    ]);
  });
  it('takes another head’s log for what it is', () => {
    expect(plan(base, { log: [logged('2026-02-26', { head: 'other' })] })[0]!.date).toBe(today);
  });
});

describe('treatments', () => {
  it('wait until the allowance lets them, and bring their deep conditioner', () => {
    const days = plan([treatment({ every: 'wash' }), ...base]);
    expect(days.map(({ treatments }) => treatments.length)).toEqual([1, 0, 1, 0]);
    expect(days.map(({ putOff }) => putOff.length)).toEqual([0, 1, 0, 1]);
    for (const { treatments, followUps, steps } of days)
      if (treatments.length > 0) {
        expect(followUps).toEqual(['s3']);
        expect(steps).toContain('s3');
      }
  });
  it('count the last one logged', () => {
    const days = plan([treatment({ every: 'wash' }), ...base], {
      log: [logged('2026-02-24', {}, ['bond-treatment'])],
    });
    expect(days.map(({ date, treatments }) => `${date} ${treatments.length}`)).toEqual([
      '2026-03-03 0',
      '2026-03-10 1',
      '2026-03-17 0',
      '2026-03-24 1',
    ]);
  });
  it('take turns where two are planned', () => {
    const days = plan(
      [treatment({ every: 'wash' }), { kind: 'bond-treatment', cadence: { every: 'wash' } }, ...base],
      { days: 56 },
    );
    const turns = days.flatMap(({ treatments }) => treatments);
    expect(turns).toEqual(['s1', 's2', 's1', 's2']);
  });

  it('the allowance holds over any routine, log and month', () => {
    const cadence = fc.oneof(
      fc.constant<Cadence>({ every: 'wash' }),
      fc.integer({ min: 1, max: 6 }).map((n): Cadence => ({ every: 'nth-wash', n })),
      fc.integer({ min: 1, max: 40 }).map((n): Cadence => ({ every: 'days', n })),
    );
    const log = fc.array(
      fc
        .tuple(fc.integer({ min: 0, max: 60 }), fc.boolean())
        .map(
          ([ago, treated]): LogEntry =>
            logged(addDays(today, -ago), {}, treated ? ['protein-treatment'] : ['gel']),
        ),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(
        cadence,
        cadence,
        log,
        fc.integer({ min: 1, max: 14 }),
        fc.constantFrom(careful, middling, thirsty),
        (a, b, past, washEvery, of) => {
          const days = plan([treatment(a), { kind: 'bond-treatment', cadence: b }, ...base], {
            log: past,
            washEvery,
            allowance: allowance(of),
            days: 120,
          });
          const dates = [
            ...past
              .filter(({ done }) => done.steps[0]?.kind === 'protein-treatment')
              .map(({ date }) => date)
              .toSorted()
              .slice(-1),
            ...days.filter(({ treatments }) => treatments.length > 0).map(({ date }) => date),
          ];
          const apart = allowance(of).numbers!.daysBetweenTreatments;
          dates.slice(1).forEach((date, index) => {
            expect(daysBetween(dates[index]!, date)).toBeGreaterThanOrEqual(apart);
          });
          for (const { treatments, followUps } of days) {
            expect(treatments.length).toBeLessThanOrEqual(1);
            if (treatments.length > 0) expect(followUps.length).toBeGreaterThan(0);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
