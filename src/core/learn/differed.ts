import { dewPoint } from '../hair/dew-point.ts';
import type { ProductKind } from '../product/product.ts';
import { daysBetween } from '../wash-day/days.ts';
import type { LogEntry } from '../wash-day/routine.ts';

/** One thing that was not as the time before. Days are between washes, dew points in °C. */
export type Difference =
  | { what: 'more' | 'less'; kind: ProductKind; name: string }
  | { what: 'other'; kind: ProductKind; name: string; before: string }
  | { what: 'air'; dew: number; before: number };

/** Dew points this far apart are other weather: a step of what is called comfortable and humid (common practice). */
const otherAir = 5;

/** What was done otherwise than on an earlier wash day, step by step, and whether the air was another. Pure. */
export function differed({ done, weather }: LogEntry, earlier: LogEntry): Difference[] {
  const name = ({ productName = '' }: LogEntry['done']['steps'][number]) => productName;
  const of = (entry: Pick<LogEntry, 'done'>, kind: ProductKind) =>
    entry.done.steps.filter((step) => step.kind === kind).map(name);
  const kinds = [...new Set([...done.steps, ...earlier.done.steps].map(({ kind }) => kind))];
  const steps = kinds.flatMap((kind): Difference[] => {
    const was = of(earlier, kind);
    const is = of({ done }, kind);
    const come = is.filter((each) => !was.includes(each));
    const gone = was.filter((each) => !is.includes(each));
    if (come.length === 1 && gone.length === 1)
      return [{ what: 'other', kind, name: come[0]!, before: gone[0]! }];
    return [
      ...come.map((each): Difference => ({ what: 'more', kind, name: each })),
      ...gone.map((each): Difference => ({ what: 'less', kind, name: each })),
    ];
  });
  const dew = weather && dewPoint(weather.celsius, weather.humidity);
  const before = earlier.weather && dewPoint(earlier.weather.celsius, earlier.weather.humidity);
  return dew !== undefined && before !== undefined && Math.abs(dew - before) >= otherAir
    ? [...steps, { what: 'air', dew: Math.round(dew), before: Math.round(before) }]
    : steps;
}

/** The wash day before one, of the same head. */
export const dayBefore = (entry: LogEntry, log: readonly LogEntry[]): LogEntry | undefined =>
  log
    .filter(({ head, date }) => head === entry.head && daysBetween(date, entry.date) > 0)
    .reduce<LogEntry | undefined>((last, each) => (!last || each.date > last.date ? each : last), undefined);
