import type { WashDayInput } from '../../../core/wash-day/add-up.ts';
import type { PlannedDay } from '../../../core/wash-day/calendar.ts';
import { Glyph } from '../../glyphs/glyph.tsx';
import type { World } from '../../world.ts';
import { stepWords } from '../steps/step-words.ts';

export function DayCell(props: {
  world: World;
  date: string;
  day: PlannedDay | undefined;
  dim: boolean;
  chosen: boolean;
  words: string;
  onChoose: () => void;
}) {
  const { world, date, day } = props;
  const { t } = world;
  const number = Number(date.slice(8));
  const today = date === world.today;
  const said = [
    props.words,
    ...(day ? [t('routine.calendar.wash')] : []),
    ...(day?.treatments.length ? [t('routine.calendar.treatment')] : []),
  ];
  return (
    <td class={`${props.dim ? 'dim' : ''}${today ? ' today' : ''}`} aria-current={today ? 'date' : undefined}>
      {day ? (
        <button
          type="button"
          class="day"
          aria-pressed={props.chosen}
          aria-label={said.join(', ')}
          onClick={props.onChoose}
        >
          <span class="number">{number}</span>
          {day.treatments.length > 0 && <Glyph name="small" ground="var(--raised)" />}
          {day.followUps.length > 0 && <Glyph name="softens" size={0.8} ground="var(--raised)" />}
        </button>
      ) : (
        <span class="number">{number}</span>
      )}
    </td>
  );
}

export function DayList(props: {
  world: World;
  input: WashDayInput;
  days: PlannedDay[];
  format: (date: string, options: Intl.DateTimeFormatOptions) => string;
}) {
  const { world, input, days, format } = props;
  const { t } = world;
  const { routine } = input;
  const kindOf = (id: string) => stepWords(world, routine, routine.steps.find((step) => step.id === id)!);
  if (days.length === 0) return <p class="hint">{t('routine.calendar.none')}</p>;
  return (
    <ul class="plain-list day-list">
      {days.map(({ date, steps, treatments, putOff }) => (
        <li key={date}>
          <strong>{format(date, { weekday: 'short', day: 'numeric', month: 'short' })}</strong>{' '}
          {steps.map((id, at) => {
            const words = kindOf(id) + (at < steps.length - 1 ? '\u00a0· ' : ' ');
            return treatments.includes(id) ? <em key={id}>{words}</em> : <span key={id}>{words}</span>;
          })}
          {putOff.length > 0 && (
            <span class="hint">{t('routine.calendar.put-off', { kind: putOff.map(kindOf).join(', ') })}</span>
          )}
        </li>
      ))}
    </ul>
  );
}
