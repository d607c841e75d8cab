import { useState } from 'preact/hooks';
import { type Run, type RunDay, runOf } from '../../../core/plan/build/alternate.ts';
import type { WashDayInput } from '../../../core/wash-day/add-up.ts';
import { dotted } from '../../describe/dotted.ts';
import { Glyph } from '../../glyphs/glyph.tsx';
import { glyphOfAnswer } from '../../glyphs/shapes.ts';
import { Card } from '../../parts/card.tsx';
import type { World } from '../../world.ts';
import { Findings } from '../findings.tsx';
import { stepWords } from '../steps/step-words.ts';

/** Long enough that what comes once in two months is seen twice. */
export const runDays = 126;
const inStrip = 10;

/** What sets a wash day apart, in words. */
export const turnWords = ({ t }: Pick<World, 't'>, { turns }: RunDay): string =>
  turns.length === 0 ? t('plan.turn.usual') : turns.map((turn) => t(`plan.turn.${turn}`)).join(', ');

/** Wash days one after the other where steps alternate: each with its own answer, and the run as a whole. */
export function RunCard({ world, input }: { world: World; input: WashDayInput }) {
  const { t } = world;
  const [chosen, setChosen] = useState<string | undefined>();
  if (input.routine.steps.every(({ cadence }) => cadence.every === 'wash')) return null;
  const run = runOf(input, runDays);
  const strip = run.days.slice(0, inStrip);
  const open = strip.find(({ date }) => date === chosen);
  const dateOf = (date: string) =>
    new Intl.DateTimeFormat(t.lang, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
      new Date(date),
    );
  return (
    <Card title={t('plan.run')} over={t('plan.run.over')} id="run">
      <ol class="plain-list run-strip">
        {strip.map((day) => (
          <li key={day.date}>
            <button
              type="button"
              class="button run-day"
              aria-pressed={day.date === chosen}
              onClick={() => setChosen(day.date === chosen ? undefined : day.date)}
            >
              <span class="run-date">{dateOf(day.date)}</span>
              <Glyph
                name={glyphOfAnswer(day.answer)}
                label={t(`shell.answer.${day.answer}`)}
                ground="var(--raised)"
              />
              <span>{turnWords(world, day)}</span>
            </button>
          </li>
        ))}
      </ol>
      <div aria-live="polite">{open && <OneDay world={world} input={input} day={open} />}</div>
      {runWords(world, run).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </Card>
  );
}

function OneDay({ world, input, day }: { world: World; input: WashDayInput; day: RunDay }) {
  const { t } = world;
  const steps = input.routine.steps.filter(({ id }) => day.steps.includes(id));
  return (
    <div class="stack">
      <p>{dotted(steps.map((step) => stepWords(world, input.routine, step)))}</p>
      {day.putOff.length > 0 && (
        <p class="hint">
          {t('routine.calendar.put-off', {
            kind: input.routine.steps
              .filter(({ id }) => day.putOff.includes(id))
              .map(({ kind }) => t(`routine.kind.${kind}`))
              .join(', '),
          })}
        </p>
      )}
      <Findings t={t} findings={day.findings.filter(({ answer }) => answer !== 'suits')} />
    </div>
  );
}

/** The run as a whole: days between treatments, doses a month. */
export function runWords({ t }: Pick<World, 't'>, { between, wanted, dosesAMonth }: Run): string[] {
  return [
    ...(between
      ? [
          between.least === between.most
            ? t('plan.run.each', { n: between.least })
            : t('plan.run.between', between),
        ]
      : []),
    ...(between && wanted !== undefined ? [t('plan.run.wanted', { n: wanted })] : []),
    t('plan.run.doses', { n: dosesAMonth }),
  ];
}
