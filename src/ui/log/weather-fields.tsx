import { dewPoint } from '../../core/hair/dew-point.ts';
import { weatherRemark } from '../../core/hair/weather.ts';
import type { LogEntry } from '../../core/wash-day/routine.ts';
import { dayStep } from '../../core/wash-day/rules/day.ts';
import { NumberField } from '../parts/controls/field.tsx';
import { Note } from '../parts/note.tsx';
import type { World } from '../world.ts';
import { degreesWords, toCelsius, toUnits } from './units.ts';

type Weather = Partial<NonNullable<LogEntry['weather']>>;

/** Temperature and humidity, if the user likes; both give the dew point. */
export function WeatherFields(props: {
  world: World;
  weather: Weather;
  onChange: (weather: Weather) => void;
}) {
  const { world, weather, onChange } = props;
  const { t } = world;
  const imperial = world.remembered.settings.units === 'imperial';
  return (
    <div class="weather">
      <NumberField
        lang={t.lang}
        label={t('log.temperature')}
        unit={imperial ? '°F' : '°C'}
        value={weather.celsius === undefined ? undefined : toUnits(weather.celsius, imperial)}
        min={-40}
        max={imperial ? 140 : 60}
        wrong={t(imperial ? 'log.temperature.wrong.f' : 'log.temperature.wrong.c')}
        onNumber={(degrees) => {
          const { celsius: _, ...rest } = weather;
          onChange(degrees === undefined ? rest : { ...rest, celsius: toCelsius(degrees, imperial) });
        }}
      />
      <NumberField
        lang={t.lang}
        label={t('log.humidity')}
        unit="%"
        value={weather.humidity}
        min={1}
        max={100}
        wrong={t('log.humidity.wrong')}
        onNumber={(humidity) => {
          const { humidity: _, ...rest } = weather;
          onChange(humidity === undefined ? rest : { ...rest, humidity });
        }}
      />
    </div>
  );
}

/** The dew point, and what it may do with the leave-ons of that day. */
export function WeatherWords({
  world,
  weather,
  done,
}: {
  world: World;
  weather: Weather;
  done: LogEntry['done'];
}) {
  const { t, practice, remembered } = world;
  if (weather.celsius === undefined || weather.humidity === undefined) return null;
  const { celsius, humidity } = weather as NonNullable<LogEntry['weather']>;
  const dew = dewPoint(celsius, humidity);
  if (dew === undefined) return null;
  const imperial = remembered.settings.units === 'imperial';
  const remark = weatherRemark(
    { celsius, humidity },
    done.steps.map((step) =>
      dayStep(step, step.label ? world.reading(step.label, step) : undefined, practice, true),
    ),
    practice.washDay,
  );
  return (
    <>
      <p class="hint">
        {t('log.weather', {
          temperature: degreesWords(celsius, imperial, t.lang),
          humidity,
          dew: degreesWords(Math.round(dew), imperial, t.lang),
        })}
      </p>
      {remark && (
        <Note t={t}>
          <p>{t(remark.key, remark.values)}</p>
        </Note>
      )}
    </>
  );
}
