import { useState } from 'preact/hooks';
import { runOf } from '../../../core/plan/build/alternate.ts';
import type { WashDayInput } from '../../../core/wash-day/add-up.ts';
import { plannedDays } from '../../../core/wash-day/calendar.ts';
import { addDays } from '../../../core/wash-day/days.ts';
import { Glyph } from '../../glyphs/glyph.tsx';
import { Card } from '../../parts/card.tsx';
import { Button } from '../../parts/controls/button.tsx';
import { Choice } from '../../parts/controls/choice.tsx';
import type { World } from '../../world.ts';
import { fileName } from '../sheet/exports.ts';
import { iCalendar } from '../sheet/icalendar.ts';
import { stepWords } from '../steps/step-words.ts';
import { DayCell, DayList } from './calendar-days.tsx';
import { turnWords } from './run-card.tsx';

const exportedDays = 92;

/** First day of the week where the user lives: 1 Monday … 7 Sunday. */
function firstDay(lang: string): number {
  const locale = new Intl.Locale(lang) as Intl.Locale & {
    getWeekInfo?(): { firstDay: number };
    weekInfo?: { firstDay: number };
  };
  return (locale.getWeekInfo?.() ?? locale.weekInfo)?.firstDay ?? 1;
}

/** The ISO date on which the week of a date begins. */
const weekStart = (date: string, first: number) =>
  addDays(date, -((new Date(date).getUTCDay() - (first % 7) + 7) % 7));

/** Wash days of a week or a month, with treatments and what follows them placed so that the allowance holds. */
export function CalendarCard({ world, input }: { world: World; input: WashDayInput }) {
  const { t, today } = world;
  const { routine } = input;
  const [span, setSpan] = useState<'week' | 'month'>('month');
  const [at, setAt] = useState(today);
  const [chosen, setChosen] = useState<string | undefined>();
  const first = firstDay(t.lang);
  const from = weekStart(span === 'week' ? at : `${at.slice(0, 7)}-01`, first);
  const inMonth = (date: string) => span === 'week' || date.slice(0, 7) === at.slice(0, 7);
  const weeks =
    span === 'week'
      ? 1
      : [...Array(6).keys()].filter((week) => week === 0 || inMonth(addDays(from, week * 7))).length;
  const plan = (start: string, days: number) =>
    plannedDays({
      routine,
      log: input.log,
      allowance: input.allowance,
      practice: world.practice,
      from: start,
      days,
      today,
    });
  const planned = new Map(plan(from, weeks * 7).map((day) => [day.date, day]));
  const dates = [...Array(weeks * 7).keys()].map((day) => addDays(from, day));
  const format = (date: string, options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(t.lang, { ...options, timeZone: 'UTC' }).format(new Date(date));
  const move = (by: number) => {
    setChosen(undefined);
    setAt(
      span === 'week'
        ? addDays(at, by * 7)
        : addDays(`${at.slice(0, 7)}-15`, by * 30)
            .slice(0, 8)
            .concat('01'),
    );
  };
  const shown = [...planned.values()].filter(({ date }) => inMonth(date));
  const save = async () => {
    const run = new Map(runOf(input, exportedDays).days.map((day) => [day.date, day]));
    const about = (date: string) => {
      const day = run.get(date);
      return day && day.turns.length > 0 ? turnWords(world, day) : undefined;
    };
    const days = plan(today, exportedDays);
    const now = world.now?.() ?? `${today}T00:00:00Z`;
    const file = await iCalendar(t, routine, days, now, about, (step) => stepWords(world, routine, step));
    world.save(fileName(routine.name, 'ics'), 'text/calendar', file);
  };
  return (
    <Card
      title={t('routine.calendar')}
      actions={
        <Button look="quiet" onClick={() => void save()}>
          {t('routine.calendar.save')}
        </Button>
      }
    >
      <Choice
        legend={<span class="sr">{t('routine.calendar.span')}</span>}
        value={span}
        onChange={(value) => {
          setSpan(value);
          setAt(today);
        }}
        options={[
          { value: 'week', label: t('routine.calendar.week') },
          { value: 'month', label: t('routine.calendar.month') },
        ]}
      />
      <div class="calendar-head">
        <Button label={t('routine.calendar.back')} onClick={() => move(-1)}>
          <span class="turn">‹</span>
        </Button>
        <strong aria-live="polite">
          {span === 'week'
            ? t('routine.calendar.week-of', { date: format(from, { day: 'numeric', month: 'long' }) })
            : format(at, { month: 'long', year: 'numeric' })}
        </strong>
        <Button label={t('routine.calendar.on')} onClick={() => move(1)}>
          <span class="turn">›</span>
        </Button>
      </div>
      <table class="calendar">
        <thead>
          <tr>
            {dates.slice(0, 7).map((date) => (
              <th key={date} scope="col" abbr={format(date, { weekday: 'long' })}>
                {format(date, { weekday: 'narrow' })}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {[...Array(weeks).keys()].map((week) => (
            <tr key={week}>
              {dates.slice(week * 7, week * 7 + 7).map((date) => (
                <DayCell
                  key={date}
                  world={world}
                  date={date}
                  day={inMonth(date) ? planned.get(date) : undefined}
                  dim={!inMonth(date)}
                  chosen={chosen === date}
                  words={format(date, { weekday: 'long', day: 'numeric', month: 'long' })}
                  onChoose={() => setChosen(chosen === date ? undefined : date)}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="hint calendar-legend">
        <span>
          <b class="today-key">{format(today, { day: 'numeric' })}</b> {t('routine.calendar.today')}
        </span>
        <span>
          <i class="dot wash" /> {t('routine.calendar.wash')}
        </span>
        <span>
          <Glyph name="small" ground="var(--raised)" /> {t('routine.calendar.treatment')}
        </span>
        <span>
          <Glyph name="softens" ground="var(--raised)" /> {t('routine.calendar.follow-up')}
        </span>
      </p>
      <DayList
        world={world}
        input={input}
        days={chosen ? shown.filter(({ date }) => date === chosen) : shown}
        format={format}
      />
    </Card>
  );
}
