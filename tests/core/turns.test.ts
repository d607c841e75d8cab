import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedDays } from '../../src/core/wash-day/calendar.ts';
import { addDays } from '../../src/core/wash-day/days.ts';
import type { Cadence, LogEntry, Routine } from '../../src/core/wash-day/routine.ts';
import { alwaysComesWith, oneAlwaysComesWith } from '../../src/core/wash-day/rules/cadence.ts';
import {
  allowance,
  careful,
  day,
  hand,
  middling,
  type Plan,
  practice,
  silk,
  today,
  water,
} from './hand-read.ts';

const turn = (n: number, from?: number): Cadence => ({
  every: 'nth-wash',
  n,
  ...(from !== undefined && { from }),
});
const mask = (n: number, from?: number): Plan => ({ kind: 'deep-conditioner', cadence: turn(n, from) });
const routineOf = (plans: Plan[]): Routine => day(plans).routine;

/** Steps of each of the next wash days, one a week. */
const planned = (routine: Routine, log: LogEntry[] = [], washes = 6, on = today, of = middling) =>
  plannedDays({
    routine,
    log,
    allowance: allowance(of),
    practice,
    from: on,
    days: 7 * washes,
    today: on,
  });
const weeks = (...args: Parameters<typeof planned>) => planned(...args).map(({ steps }) => steps.join());

/** A wash day as it is kept: the steps of the routine that were done. */
const entry = (routine: Routine, date: string, ids: readonly string[]): LogEntry => ({
  id: date,
  head: routine.head,
  date,
  done: { name: '', steps: routine.steps.filter(({ id }) => ids.includes(id)) },
  feel: {},
  notes: '',
});

describe('two that take turns', () => {
  const routine = routineOf([{ kind: 'cleanser' }, mask(2, 1), mask(2, 2)]);
  const ago = (days: number) => addDays(today, -days);

  it('come one after the other, before anything is logged', () => {
    expect(weeks(routine)).toEqual(['s1,s2', 's1,s3', 's1,s2', 's1,s3', 's1,s2', 's1,s3']);
  });
  it('go on so after one of them is logged: a mask is not the other mask', () => {
    expect(weeks(routine, [entry(routine, ago(7), ['s1', 's2'])], 3)).toEqual(['s1,s3', 's1,s2', 's1,s3']);
    expect(weeks(routine, [entry(routine, ago(7), ['s1', 's3'])], 3)).toEqual(['s1,s2', 's1,s3', 's1,s2']);
  });
  it('go on so when one was left out, or done twice', () => {
    const s2 = (days: number) => entry(routine, ago(days), ['s1', 's2']);
    expect(weeks(routine, [s2(14), entry(routine, ago(7), ['s1'])], 2)).toEqual(['s1,s2', 's1,s3']);
    expect(weeks(routine, [s2(14), s2(7)], 2)).toEqual(['s1,s3', 's1,s2']);
  });
  it('begin anew where the log knows neither, however long it is', () => {
    const old = routineOf([{ kind: 'gel' }]);
    const log = [21, 14, 7].map((days) => entry(old, ago(days), ['s1']));
    const own = { ...routine, steps: routine.steps.map((step) => ({ ...step, id: `new-${step.id}` })) };
    expect(weeks(own, log, 2)).toEqual(['new-s1,new-s2', 'new-s1,new-s3']);
  });
  it('are told by product where the log is older than the steps', () => {
    const before = {
      ...routine,
      steps: routine.steps.map((step) => ({ ...step, id: `old-${step.id}`, product: `of-${step.id}` })),
    };
    const now = { ...routine, steps: routine.steps.map((step) => ({ ...step, product: `of-${step.id}` })) };
    expect(weeks(now, [entry(before, ago(7), ['old-s1', 'old-s2'])], 2)).toEqual(['s1,s3', 's1,s2']);
  });
  it('count the first where only the second says its turn', () => {
    expect(weeks(routineOf([mask(2), mask(2, 2)]), [], 3)).toEqual(['s1', 's2', 's1']);
  });
  it('a step alone may begin later, and is not put off from day to day', () => {
    const alone = routineOf([{ kind: 'gel' }, mask(3, 3)]);
    const log: LogEntry[] = [];
    for (let wash = 0; wash < 6; wash++) {
      const on = addDays(today, 7 * wash);
      const next = planned(alone, log, 1, on)[0]!;
      expect(next.steps.includes('s2')).toBe(wash % 3 === 2);
      log.push(entry(alone, on, next.steps));
    }
  });
});

describe('a treatment that takes turns', () => {
  it('put off, comes once the hair may take it, and the turns stay', () => {
    // The treatment would be due after 14 days, the hair takes it after 28 (dictionary/allowance.json).
    const routine = routineOf([
      { kind: 'protein-treatment', cadence: turn(2, 1), of: hand([water, silk]) },
      { kind: 'conditioner' },
      mask(2, 2),
    ]);
    const apart = allowance(careful).numbers!.daysBetweenTreatments;
    const days = planned(routine, [], 12, today, careful);
    expect(days.flatMap(({ putOff }) => putOff)).toContain('s1');
    const treated = days.flatMap(({ treatments }, at) => (treatments.length > 0 ? [at] : []));
    for (const [at, wash] of treated.slice(1).entries())
      expect((wash - treated[at]!) * 7).toBeGreaterThanOrEqual(apart);
    // Every second wash is the mask's, whenever the treatment was done.
    for (const [at, { steps }] of days.entries()) if (at % 2 === 1) expect(steps).toContain('s3');
  });
  it('is not starved by another one', () => {
    const routine = routineOf([
      { kind: 'protein-treatment', cadence: { every: 'wash' } },
      { kind: 'bond-treatment', cadence: turn(2, 2) },
      { kind: 'conditioner' },
    ]);
    const done = planned(routine, [], 30).flatMap(({ treatments }) => treatments);
    const counts = ['s1', 's2'].map((id) => done.filter((one) => one === id).length);
    expect(Math.abs(counts[0]! - counts[1]!)).toBeLessThanOrEqual(1);
  });
});

// An independent telling: what a person does with a wall calendar and nothing else.
const cadences = fc
  .integer({ min: 1, max: 6 })
  .chain((n) => fc.integer({ min: 1, max: n }).map((from) => ({ n, from })));
const some = fc.array(cadences, { minLength: 1, maxLength: 5 });
const kinds = ['deep-conditioner', 'pre-wash', 'cleanser'] as const;
const made = (all: { n: number; from: number }[]) =>
  routineOf(all.map(({ n, from }, at) => ({ kind: kinds[at % 3]!, cadence: turn(n, from) })));

describe('turns beside a count on the fingers', () => {
  it('without a log: wash by wash, each step when the count says its number', () => {
    fc.assert(
      fc.property(some, (all) => {
        const said = planned(made(all), [], 30).map(({ steps }) => steps);
        const counters = all.map(({ n, from }) => n - from);
        for (const steps of said) {
          const fingers: string[] = [];
          counters.forEach((have, at) => {
            counters[at] = have + 1;
            if (counters[at] === all[at]!.n) {
              fingers.push(`s${at + 1}`);
              counters[at] = 0;
            }
          });
          expect(steps).toEqual(fingers);
        }
      }),
      { numRuns: 300 },
    );
  });
  it('planned each day anew from what was logged, it is what was planned at first', () => {
    fc.assert(
      fc.property(some, (all) => {
        const routine = made([{ n: 1, from: 1 }, ...all]);
        const first = planned(routine, [], 14).map(({ steps }) => steps);
        const log: LogEntry[] = [];
        for (const [wash, steps] of first.entries()) {
          const on = addDays(today, wash * 7);
          expect(planned(routine, log, 1, on)[0]!.steps).toEqual(steps);
          log.push(entry(routine, on, steps));
        }
      }),
      { numRuns: 100 },
    );
  });
  it('whatever is left out or done out of turn, two of different turns never meet and none is forgotten', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }),
        fc.array(fc.subarray(['s1', 's2', 's3', 's4', 's5']), { maxLength: 12 }),
        (n, past) => {
          const turns = [...Array(n).keys()];
          const routine = routineOf(turns.map((at) => mask(n, at + 1)));
          const log = past.map((ids, at) => entry(routine, addDays(today, 7 * (at - past.length)), ids));
          const next = planned(routine, log, 2 * n).map(({ steps }) => steps);
          expect(next.every(({ length }) => length === 1)).toBe(true);
          expect(new Set(next.slice(0, n).flat()).size).toBe(n);
        },
      ),
      { numRuns: 300 },
    );
  });
  it('one that is said to come with another is there whenever the other is', () => {
    fc.assert(
      fc.property(cadences, cadences, (a, b) => {
        const days = planned(made([a, b]), [], 60);
        const there = days.every(({ steps }) => steps.includes('s1') || !steps.includes('s2'));
        expect(alwaysComesWith(turn(a.n, a.from), turn(b.n, b.from))).toBe(there);
      }),
      { numRuns: 300 },
    );
  });
  it('several of which one is said to be there each time are, wash by wash', () => {
    const few = fc.array(cadences, { minLength: 1, maxLength: 3 });
    let [yes, no] = [0, 0];
    fc.assert(
      fc.property(few, cadences, (some, b) => {
        const cadenceOf = ({ n, from }: typeof b) => turn(n, from);
        const days = planned(made([...some, b]), [], 120);
        const at = `s${some.length + 1}`;
        const there = days.every(({ steps }) => steps.some((id) => id !== at) || !steps.includes(at));
        expect(oneAlwaysComesWith(some.map(cadenceOf), cadenceOf(b))).toBe(there);
        if (there) yes++;
        else no++;
      }),
      { numRuns: 400 },
    );
    expect(Math.min(yes, no)).toBeGreaterThan(40);
  });
  it('of two masks in turns the one that is due follows a treatment, and no other is brought along', () => {
    const days = planned(
      routineOf([{ kind: 'protein-treatment', cadence: turn(3, 1) }, mask(2, 1), mask(2, 2)]),
      [],
      12,
    );
    const treated = days.filter(({ treatments }) => treatments.length > 0);
    expect(treated.length).toBeGreaterThan(1);
    for (const { steps } of days) expect(steps.filter((id) => id !== 's1')).toHaveLength(1);
  });
});
