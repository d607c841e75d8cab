import { useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import type { LogEntry, Routine } from '../../core/wash-day/routine.ts';
import { frozen, keepEntry } from '../../use/acts/matters/log.ts';
import { stepsDue } from '../../use/steps-due.ts';
import { carryOut } from '../carry-out.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBoxes } from '../parts/controls/choice.tsx';
import { TextField } from '../parts/controls/field.tsx';
import { Select } from '../parts/controls/select.tsx';
import type { World } from '../world.ts';
import { FeelScale, feelPairs } from './feel-scale.tsx';
import { PhotoField } from './photo-field.tsx';
import { WeatherFields, WeatherWords } from './weather-fields.tsx';

/** One wash day as it was: what was done, the weather, how it felt when dry, a photo, notes. */
export function EntryForm(props: {
  world: World;
  head: Head;
  routines: readonly Routine[];
  routine: Routine | undefined;
  entry?: LogEntry;
  onDone: () => void;
}) {
  const { world, head, routines, entry } = props;
  const { t } = world;
  const [date, setDate] = useState(entry?.date.slice(0, 10) ?? world.today);
  const [chosen, setChosen] = useState(props.routine?.id);
  const routine = routines.find(({ id }) => id === chosen);
  const [left, setLeft] = useState<readonly string[] | undefined>();
  const badDate = !/^\d{4}-\d\d-\d\d$/.test(date);
  const ticked = left ?? (routine ? stepsDue(world, routine, badDate ? world.today : date) : []);
  const [weather, setWeather] = useState<Partial<NonNullable<LogEntry['weather']>>>(entry?.weather ?? {});
  const [feel, setFeel] = useState(entry?.feel ?? {});
  const [notes, setNotes] = useState(entry?.notes ?? '');
  const [photo, setPhoto] = useState<string | null | undefined>();
  const done: LogEntry['done'] =
    entry?.done ??
    (routine ? frozen(world.remembered, routine, new Set(ticked)) : { name: t('log.no-routine'), steps: [] });
  const future = date > world.today;

  const keep = async () => {
    const { celsius, humidity } = weather;
    const kept: LogEntry = {
      id: entry?.id ?? world.newId(),
      head: head.id,
      date,
      done,
      ...(celsius !== undefined && humidity !== undefined && { weather: { celsius, humidity } }),
      feel,
      notes,
      ...(entry?.photo && { photo: entry.photo }),
      // Told otherwise, the day may speak for something else.
      ...(entry?.answered &&
        JSON.stringify(feel) === JSON.stringify(entry.feel) && { answered: entry.answered }),
    };
    if (await carryOut(world, keepEntry(kept, photo, world.newId()))) props.onDone();
  };

  return (
    <Card title={t(entry ? 'log.change' : 'log.new')} over={head.name} id="log-entry">
      <TextField
        label={t('log.date')}
        type="date"
        value={date}
        onInput={setDate}
        error={future ? t('log.date.future') : badDate ? t('log.date.wrong') : undefined}
      />
      {entry ? (
        <p>{t('log.as-done', { name: entry.done.name, n: entry.done.steps.length })}</p>
      ) : (
        <>
          <Select
            label={t('log.routine')}
            empty={t('log.no-routine')}
            options={routines.map(({ id, name }) => ({ value: id, label: name }))}
            value={chosen}
            onChange={(id) => {
              setChosen(id);
              setLeft(undefined);
            }}
          />
          {routine && routine.steps.length > 0 && (
            <CheckBoxes
              legend={t('log.steps')}
              layout="list"
              value={ticked}
              onChange={setLeft}
              options={routine.steps.map(({ id, kind, product }) => ({
                value: id,
                label: t(`routine.kind.${kind}`),
                hint: world.remembered.products.find((one) => one.id === product)?.name,
              }))}
            />
          )}
        </>
      )}
      <section class="stack" aria-labelledby="log-feel">
        <h4 id="log-feel">{t('log.feel')}</h4>
        <p class="hint">{t('log.feel.means')}</p>
        {feelPairs.map((pair) => (
          <FeelScale
            key={pair}
            t={t}
            pair={pair}
            value={feel[pair]}
            onChange={(value) => {
              const { [pair]: _, ...rest } = feel;
              setFeel(value === undefined ? rest : { ...rest, [pair]: value });
            }}
          />
        ))}
      </section>
      <section class="stack" aria-labelledby="log-weather">
        <h4 id="log-weather">{t('log.weather.title')}</h4>
        <WeatherFields world={world} weather={weather} onChange={setWeather} />
        <WeatherWords world={world} weather={weather} done={done} />
      </section>
      <TextField label={t('log.notes')} rows={3} value={notes} onInput={setNotes} />
      <PhotoField world={world} kept={entry?.photo} photo={photo} onChange={setPhoto} />
      <div class="actions">
        <Button look="strong" disabled={future || badDate} onClick={() => void keep()}>
          {t('log.keep')}
        </Button>
        <Button onClick={props.onDone}>{t('log.leave')}</Button>
      </div>
    </Card>
  );
}
