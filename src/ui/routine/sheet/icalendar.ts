import type { PlannedDay } from '../../../core/wash-day/calendar.ts';
import { addDays } from '../../../core/wash-day/days.ts';
import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import type { Translate } from '../../words/index.ts';

// RFC 5545, 3.1: text holds no control character; a lone CR would end a line for some readers.
const plain = (words: string) => words.replace(/\r\n?/g, '\n').replace(/(?!\n)\p{Cc}/gu, ' ');

/**
 * Planned wash days as an iCalendar file (RFC 5545): one all-day event a wash day, under a lasting UID, so a
 * later export replaces an earlier one. No recurrence rule: treatments move with the allowance.
 */
export async function iCalendar(
  t: Translate,
  routine: Routine,
  days: readonly PlannedDay[],
  now: string,
  /** What sets a day apart. */
  about: (date: string) => string | undefined = () => undefined,
  /** What a step is called. */
  called: (step: Step) => string = ({ kind }) => t(`routine.kind.${kind}`),
): Promise<string> {
  const { default: ICAL } = await import('ical.js');
  const calendar = new ICAL.Component('vcalendar');
  calendar.updatePropertyWithValue('version', '2.0');
  calendar.updatePropertyWithValue('prodid', '-//Strandline//Wash days//EN');
  calendar.updatePropertyWithValue('calscale', 'GREGORIAN');
  for (const day of days) {
    const event = new ICAL.Component('vevent');
    const words = routine.steps
      .filter(({ id }) => day.steps.includes(id))
      .map((step, index) => `${index + 1}. ${called(step)}`);
    const put = (name: string, value: unknown) =>
      event.updatePropertyWithValue(name, typeof value === 'string' ? plain(value) : (value as string));
    put('uid', `${routine.id}-${day.date}@strandline.invalid`);
    put('dtstamp', ICAL.Time.fromJSDate(new Date(now), true));
    put('dtstart', ICAL.Time.fromDateString(day.date));
    put('dtend', ICAL.Time.fromDateString(addDays(day.date, 1)));
    put(
      'summary',
      t(day.treatments.length > 0 ? 'routine.calendar.event.treatment' : 'routine.calendar.event', {
        name: routine.name,
      }),
    );
    const first = about(day.date);
    put('description', [...(first ? [first, ''] : []), ...words].join('\n'));
    put('transp', 'TRANSPARENT');
    calendar.addSubcomponent(event);
  }
  return `${calendar.toString()}\r\n`;
}
