import { useState } from 'preact/hooks';
import { washDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { headInUse, routineInUse } from '../../use/in-use.ts';
import { stillReading, washDayInput } from '../../use/judge/wash-day-input.ts';
import { carryOut } from '../carry-out.ts';
import { RemovedLately } from '../keeping/removed-lately.tsx';
import { Columns } from '../parts/columns.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Empty } from '../parts/empty.tsx';
import { NoHead } from '../parts/no-head.tsx';
import { InTurn } from '../parts/waiting/in-turn.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import { ChartCard } from '../routine/chart-card.tsx';
import { DaySummary } from '../routine/day-summary.tsx';
import { CalendarCard } from '../routine/days/calendar-card.tsx';
import { BuildCard, WishesCard } from '../routine/plan/build-card.tsx';
import { AddPreview } from '../routine/steps/add-preview.tsx';
import '../routine/routine.css';
import { keepRoutine, newRoutine } from '../../use/acts/matters/routines.ts';
import { LessonCard } from '../log/lesson-card.tsx';
import { RunCard } from '../routine/days/run-card.tsx';
import { OpenPlan } from '../routine/plan/open-plan.tsx';
import { AboutRoutine, RoutinePicker } from '../routine/routine-picker.tsx';
import { StepList } from '../routine/steps/step-list.tsx';
import { SuggestionsCard } from '../routine/suggestions.tsx';
import type { World } from '../world.ts';

const manyProducts = 300; // from here on what weighs them all is drawn after the day itself
const usualSteps = ['cleanser', 'conditioner', 'leave-in', 'gel'] as const;

/** The wash day: its steps, what they add up to, the smallest change that settles it, when, and the picture. */
export function RoutinePlace({ world }: { world: World }) {
  const { t, remembered } = world;
  const head = headInUse(remembered);
  const routine = routineInUse(remembered, head);
  if (!head) return <NoHead world={world} title={t('shell.place.routine')} why={t('routine.no-head.why')} />;
  if (!routine) {
    const met = addingFrom(world);
    const begin = (kinds: typeof usualSteps | []) =>
      void carryOut(
        world,
        keepRoutine(remembered, newRoutine(world, head.id, t('routine.first'), kinds), {
          key: 'routine.begun',
        }),
      );
    return (
      <>
        <h2>{t('shell.place.routine')}</h2>
        {met ? (
          <SentToAdd
            key={JSON.stringify(met)}
            world={world}
            routine={newRoutine(world, head.id, t('routine.first'))}
            usual={usualSteps}
          />
        ) : (
          <Empty
            title={t('routine.empty')}
            actions={
              <>
                <Button look="strong" onClick={() => begin(usualSteps)}>
                  {t('routine.empty.usual')}
                </Button>
                <Button onClick={() => begin([])}>{t('routine.empty.bare')}</Button>
              </>
            }
          >
            <p>{t('routine.empty.why')}</p>
          </Empty>
        )}
        <OpenPlan world={world} head={head} />
        <RemovedLately world={world} thing="routines" />
      </>
    );
  }
  return <Planned key={routine.id} world={world} routine={routine} />;
}

/** The product that the place was opened for. */
const addingFrom = ({ detail }: World) => (detail && 'add' in detail ? detail.add : undefined);

/** What was sent here to be added, until it is added or left: then nothing is asked of this place any more. */
function SentToAdd(props: { world: World; routine: Routine; usual?: typeof usualSteps }) {
  const { world } = props;
  const met = addingFrom(world);
  return met && <AddPreview {...props} met={met} onDone={() => world.go('routine')} />;
}

function Planned({ world, routine }: { world: World; routine: Routine }) {
  const { t, remembered } = world;
  const [changed, setChanged] = useState<readonly string[]>([]);
  const head = headInUse(remembered)!;
  const routines = remembered.routines.filter((one) => one.head === head.id);
  const input = washDayInput(world, routine);
  const day = washDay(input);
  const reading = stillReading(world, input);
  const late = remembered.products.length > manyProducts;
  const empty = routine.steps.every(({ product }) => product === undefined);
  return (
    <>
      <h2>{routine.name}</h2>
      <RoutinePicker world={world} head={head} routine={routine} routines={routines} />
      <SentToAdd key={JSON.stringify(world.detail)} world={world} routine={routine} />
      <Columns
        start={
          <>
            {reading ? (
              <p role="status">
                <Pending world={world} words={t('routine.reading')} />
              </p>
            ) : empty ? (
              <p>{t('routine.fill')}</p>
            ) : (
              <DaySummary world={world} routine={routine} day={day} />
            )}
            <StepList
              world={world}
              routine={routine}
              input={input}
              findings={reading || empty ? [] : day.findings}
              changed={changed}
            />
            <InTurn late={late}>
              {!empty && !reading && <ChartCard world={world} routine={routine} day={day} />}
            </InTurn>
          </>
        }
        end={
          <>
            <InTurn late={late}>
              <InTurn late={late}>
                {!empty && !reading && (
                  <SuggestionsCard world={world} input={input} day={day} onChanged={setChanged} />
                )}
                <InTurn late={late}>
                  <LessonCard world={world} routine={routine.id} onChanged={setChanged} />
                  <InTurn late={late}>
                    {!reading && remembered.products.length > 0 && (
                      <BuildCard world={world} routine={routine} />
                    )}
                  </InTurn>
                </InTurn>
              </InTurn>
            </InTurn>
            <InTurn late={late}>
              <WishesCard world={world} />
              {!empty && !reading && <RunCard world={world} input={input} />}
              {routine.steps.length > 0 && <CalendarCard world={world} input={input} />}
            </InTurn>
            <div class="actions">
              {routine.steps.length > 0 && (
                <Button onClick={() => world.go('log', { begin: 'entry' })}>{t('routine.log-it')}</Button>
              )}
            </div>
          </>
        }
      />
      <AboutRoutine world={world} head={head} routine={routine} routines={routines} />
      <RemovedLately world={world} thing="routines" />
      <p class="hint">{t('routine.caution')}</p>
    </>
  );
}
