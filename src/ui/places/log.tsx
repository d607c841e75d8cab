import { useMemo, useState } from 'preact/hooks';
import { newestFirst } from '../../core/wash-day/days.ts';
import { headInUse, routineInUse } from '../../use/in-use.ts';
import { EntryCard } from '../log/entry-card.tsx';
import { EntryForm } from '../log/entry-form.tsx';
import '../log/log.css';
import { RemovedLately } from '../keeping/removed-lately.tsx';
import { LessonCard } from '../log/lesson-card.tsx';
import { TallyCard } from '../log/tally-card.tsx';
import { useTaught } from '../log/use-taught.ts';
import { Columns } from '../parts/columns.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Empty } from '../parts/empty.tsx';
import { useFocusOn } from '../parts/focus/focus-on.ts';
import { NoHead } from '../parts/no-head.tsx';
import { WindowList } from '../parts/waiting/window-list.tsx';
import type { World } from '../world.ts';

/** Wash days as they were, newest first, and what the good ones share. */
export function LogPlace({ world }: { world: World }) {
  const { t, remembered, detail } = world;
  const head = headInUse(remembered);
  // 'new' begins an entry, an id changes one.
  const [at, setAt] = useState<string | undefined>(
    detail && 'entry' in detail ? detail.entry : detail && 'begin' in detail ? 'new' : undefined,
  );
  useFocusOn(at, '#log-entry h3');
  const entries = useMemo(
    () => remembered.log.filter((entry) => entry.head === head?.id).toSorted(newestFirst),
    [remembered.log, head?.id],
  );
  const { taught, waits } = useTaught(world);
  if (!head) return <NoHead world={world} title={t('shell.place.log')} why={t('log.no-head.why')} />;
  const form = {
    world,
    head,
    routines: remembered.routines.filter((one) => one.head === head.id),
    routine: routineInUse(remembered, head),
    onDone: () => setAt(undefined),
  };
  const changing = entries.find(({ id }) => id === at);
  const begun = at === 'new' || changing !== undefined;
  const begin = () => setAt('new');
  return (
    <>
      <h2>{remembered.heads.length > 1 ? t('log.of', { name: head.name }) : t('shell.place.log')}</h2>
      {!begun && entries.length > 0 && (
        <div class="actions">
          <Button look="strong" onClick={begin}>
            {t('log.begin')}
          </Button>
        </div>
      )}
      {entries.length === 0 && at !== 'new' && (
        <Empty
          title={t('log.empty')}
          actions={
            <Button look="strong" onClick={begin}>
              {t('log.begin')}
            </Button>
          }
        >
          <p>{t('log.empty.why')}</p>
        </Empty>
      )}
      <Columns
        start={
          <>
            {begun && <EntryForm key={at} {...form} {...(changing && { entry: changing })} />}
            {!at && <LessonCard world={world} />}
            <TallyCard world={world} head={head} entries={entries} />
          </>
        }
        end={
          <>
            {entries.length > 0 && (
              <WindowList items={entries} keyOf={({ id }) => id} label={t('log.entries')} estimate={110}>
                {(entry) => (
                  <EntryCard
                    world={world}
                    entry={entry}
                    tells={entry === entries[0] && !waits && taught?.lesson.entry.id !== entry.id}
                    onChange={() => setAt(entry.id)}
                  />
                )}
              </WindowList>
            )}
            <RemovedLately world={world} thing="log" />
          </>
        }
      />
    </>
  );
}
