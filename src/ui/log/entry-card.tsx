import { useState } from 'preact/hooks';
import { dayFelt } from '../../core/hair/day-feel.ts';
import { dayBefore, differed } from '../../core/learn/differed.ts';
import type { LogEntry } from '../../core/wash-day/routine.ts';
import { removeEntry } from '../../use/acts/matters/log.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';
import { Differed } from './differed.tsx';
import { feelWords } from './feel-scale.tsx';
import { KeptPhoto } from './photo-field.tsx';
import { WeatherWords } from './weather-fields.tsx';

// Making a format takes longer than using it, and a long log uses it a thousand times.
const formats = new Map<string, Intl.DateTimeFormat>();
function dayFormat(lang: string): Intl.DateTimeFormat {
  const format =
    formats.get(lang) ??
    new Intl.DateTimeFormat(lang, {
      weekday: 'short',
      day: 'numeric',
      month: 'short',
      year: 'numeric',
      timeZone: 'UTC',
    });
  formats.set(lang, format);
  return format;
}

/** One logged wash day: the day and how it felt, of the newest what was not as the time before; the rest when opened. */
export function EntryCard({
  world,
  entry,
  tells,
  onChange,
}: {
  world: World;
  entry: LogEntry;
  /** What was not as the time before is said without a press: of the newest day, where no lesson says it. */
  tells: boolean;
  onChange: () => void;
}) {
  const { t, practice } = world;
  const [open, setOpen] = useState(false);
  const date = dayFormat(t.lang).format(new Date(entry.date.slice(0, 10)));
  const felt = dayFelt(entry.feel, practice.allowance.feel);
  const words = feelWords(t, entry.feel);
  const before = open || tells ? dayBefore(entry, world.remembered.log) : undefined;
  return (
    <article class="log-entry" aria-label={date}>
      <p class="log-head">
        <strong>{date}</strong> <span class={`felt ${felt}`}>{t(`log.felt.${felt}`)}</span>
      </p>
      {words && <p>{words}</p>}
      {entry.notes && <p class="log-notes">{entry.notes}</p>}
      {before && <Differed world={world} differences={differed(entry, before)} />}
      {entry.answered && <p class="hint">{t(`log.learn.answered.${entry.answered}`)}</p>}
      <Disclosure
        summary={t('log.as-done', { name: entry.done.name, n: entry.done.steps.length })}
        open={open}
        onToggle={setOpen}
      >
        {open && (
          <>
            <ol class="log-steps">
              {entry.done.steps.map((step) => (
                <li key={step.id}>
                  {t(`routine.kind.${step.kind}`)}
                  {step.productName && (
                    <span class="hint">
                      {'\u00a0· '}
                      {step.productName}
                    </span>
                  )}
                </li>
              ))}
            </ol>
            {entry.weather && <WeatherWords world={world} weather={entry.weather} done={entry.done} />}
            {entry.photo && <KeptPhoto world={world} photo={entry.photo} alt={t('log.photo.alt')} />}
            <div class="actions">
              <Button label={t('log.change.what', { date })} onClick={onChange}>
                {t('log.change.do')}
              </Button>
              <Button
                look="quiet"
                label={t('log.remove.what', { date })}
                onClick={() => void carryOut(world, removeEntry(entry))}
              >
                {t('log.remove')}
              </Button>
            </div>
          </>
        )}
      </Disclosure>
    </article>
  );
}
