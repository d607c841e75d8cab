import ICAL from 'ical.js';
import nodeIcal, { type VEvent } from 'node-ical';
import { describe, expect, it } from 'vitest';
import { plannedDays } from '../../src/core/wash-day/calendar.ts';
import { iCalendar } from '../../src/ui/routine/sheet/icalendar.ts';
import { translator } from '../../src/ui/words/index.ts';
import { allowance, day, middling, practice, today } from '../core/hand-read.ts';

// RFC 5545, Internet Calendaring and Scheduling Core Object Specification; read back by node-ical, a parser
// that shares no code with the library that writes.
const t = translator('en');
const { routine } = day(
  [
    { kind: 'protein-treatment', cadence: { every: 'nth-wash', n: 2 } },
    { kind: 'cleanser' },
    { kind: 'deep-conditioner' },
    { kind: 'gel' },
  ],
  middling,
);
const named = {
  ...routine,
  name: 'Sönntag; slow, "wet" wash \\ with a rather long name that must be folded into several lines',
};
const days = plannedDays({
  routine,
  log: [],
  allowance: allowance(middling),
  practice,
  from: today,
  days: 60,
  today,
});
const file = await iCalendar(t, named, days, '2026-03-01T09:30:00Z');

describe('planned wash days as iCalendar', () => {
  it('holds no control character but its own line ends, whatever a routine is called', async () => {
    const evil = { ...named, name: 'Sunday\rBEGIN:VALARM\r\nX\0Y\u0007' };
    const text = await iCalendar(t, evil, days.slice(0, 1), '2026-03-01T09:30:00Z');
    expect(text.replaceAll('\r\n', '')).not.toMatch(/\p{Cc}/u);
    expect(text).not.toMatch(/^BEGIN:VALARM/m);
  });

  it('is read by another parser: every day, all day, with its steps', () => {
    const events = Object.values(nodeIcal.sync.parseICS(file)).filter(
      (one): one is VEvent => one?.type === 'VEVENT',
    );
    expect(events).toHaveLength(days.length);
    events.forEach((event, index) => {
      const { date, steps, treatments } = days[index]!;
      expect(event.datetype).toBe('date');
      const { start } = event;
      expect([start.getFullYear(), start.getMonth() + 1, start.getDate()]).toEqual(
        date.split('-').map(Number),
      );
      expect(event.description).toBe(
        steps
          .map(
            (id, at) =>
              `${at + 1}. ${t(`routine.kind.${routine.steps.find((step) => step.id === id)!.kind}`)}`,
          )
          .join('\n'),
      );
      expect(event.summary).toBe(treatments.length > 0 ? `${named.name}, with treatment` : named.name);
    });
    expect(events.some(({ summary }) => String(summary).endsWith('with treatment'))).toBe(true);
  });

  it('keeps to the letter of the standard: lines, folding, required properties', () => {
    // 3.1: CRLF line ends, at most 75 octets a line.
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const lines = file.split('\r\n');
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(lines.at(-1)).toBe('');
    // 3.6: PRODID and VERSION once; 3.6.1: UID and DTSTAMP in each event, and each UID once.
    const calendar = new ICAL.Component(ICAL.parse(file));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBeTruthy();
    const events = calendar.getAllSubcomponents('vevent');
    const uids = events.map((event) => event.getFirstPropertyValue('uid'));
    expect(new Set(uids).size).toBe(days.length);
    for (const event of events) {
      expect(String(event.getFirstPropertyValue('dtstamp'))).toBe('2026-03-01T09:30:00Z');
      // 3.6.1: with DATE starts, DTEND is the day after.
      const [start, end] = ['dtstart', 'dtend'].map((name) =>
        Date.parse(String(event.getFirstPropertyValue(name))),
      );
      expect(end! - start!).toBe(86_400_000);
    }
  });

  it('gives the same day the same UID again, so that a later file replaces an earlier one', async () => {
    const again = await iCalendar(t, named, days.slice(1), '2026-03-08T09:30:00Z');
    const uids = (text: string) =>
      [...text.replaceAll('\r\n ', '').matchAll(/^UID:(.*)$/gm)].map(([, uid]) => uid);
    expect(uids(file).slice(1)).toEqual(uids(again));
  });

  it('tells steps that take turns apart, as another parser reads it: one week the one, the next the other', async () => {
    const turn = (from: number) => ({ every: 'nth-wash' as const, n: 2, from });
    const { routine: turns } = day(
      [
        { kind: 'cleanser' },
        { kind: 'deep-conditioner', cadence: turn(1) },
        { kind: 'deep-conditioner', cadence: turn(2) },
      ],
      middling,
    );
    const weeks = plannedDays({ routine: turns, log: [], practice, from: today, days: 28, today });
    const said = await iCalendar(t, turns, weeks, '2026-03-01T09:30:00Z', undefined, ({ id }) => id);
    const events = Object.values(nodeIcal.sync.parseICS(said)).filter(
      (one): one is VEvent => one?.type === 'VEVENT',
    );
    expect(events.map(({ description }) => description)).toEqual([
      '1. s1\n2. s2',
      '1. s1\n2. s3',
      '1. s1\n2. s2',
      '1. s1\n2. s3',
    ]);
  });

  it('without a wash day is an empty calendar, still well formed', async () => {
    expect(
      Object.values(nodeIcal.sync.parseICS(await iCalendar(t, named, [], '2026-03-01T09:30:00Z'))).filter(
        (one) => one?.type === 'VEVENT',
      ),
    ).toEqual([]);
  });
});
