import type { RefObject } from 'preact';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { planFileFor } from '../../use/acts/plan-file.ts';
import { keepRoutine } from '../../use/acts/routines.ts';
import { carryOut } from '../carry-out.ts';
import { Button } from '../parts/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { KeptText } from '../parts/kept-text.tsx';
import type { World } from '../world.ts';
import { fileName, pngOf, routineText } from './exports.ts';
import { printSheet } from './print-sheet.tsx';
import { SheetSteps, SheetWatch } from './sheet.tsx';
import { sheetPicture } from './sheet-picture.ts';
import { sheetOf } from './sheet-words.ts';

/** The sheet for a client or a follower: seen first, with a note of one's own, then printed, saved or sent. */
export function HandOver(props: {
  world: World;
  routine: Routine;
  day: WashDay;
  /** The sheet as it is printed. */
  paper: RefObject<HTMLDivElement | null>;
}) {
  const { world, routine, day, paper } = props;
  const { t } = world;
  const sheet = sheetOf(world, routine, day);
  const { note: _, ...bare } = routine;
  const save = (ending: string, type: string, content: string | Blob) =>
    world.save(fileName(routine.name, ending), type, content);
  return (
    <Disclosure summary={t('plan.hand-over')}>
      <KeptText
        key={routine.id}
        label={t('plan.note')}
        hint={t('plan.note.hint')}
        rows={3}
        value={routine.note ?? ''}
        onKeep={(note) =>
          void carryOut(world, keepRoutine(world.remembered, note ? { ...bare, note } : bare))
        }
      />
      <section class="sheet" aria-label={t('plan.hand-over')}>
        <h4>{sheet.name}</h4>
        <SheetSteps t={t} sheet={sheet} />
        <SheetWatch t={t} sheet={sheet} />
      </section>
      <div class="actions">
        <Button onClick={() => printSheet('A4')}>{t('routine.take.a4')}</Button>
        <Button onClick={() => printSheet('letter')}>{t('routine.take.letter')}</Button>
        <Button
          onClick={() =>
            void pngOf(sheetPicture(paper.current!)).then((picture) => save('png', 'image/png', picture))
          }
        >
          {t('plan.hand-over.png')}
        </Button>
        <Button onClick={() => save('txt', 'text/plain', routineText(world, routine, day))}>
          {t('routine.take.text')}
        </Button>
        <Button
          onClick={() =>
            save('json', 'application/json', planFileFor(world.remembered, routine, world.today))
          }
        >
          {t('plan.file.save')}
        </Button>
      </div>
      <p class="hint">{t('plan.hand-over.private')}</p>
    </Disclosure>
  );
}
