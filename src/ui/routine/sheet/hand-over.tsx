import type { RefObject } from 'preact';
import type { WashDay } from '../../../core/wash-day/add-up.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { planFileFor } from '../../../use/acts/matters/plan-file.ts';
import { keepRoutine } from '../../../use/acts/matters/routines.ts';
import { carryOut } from '../../carry-out.ts';
import { Button } from '../../parts/controls/button.tsx';
import { KeptText } from '../../parts/controls/kept-text.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import type { World } from '../../world.ts';
import { fileName, routineText } from './exports.ts';
import { SheetSteps, SheetWatch } from './sheet.tsx';
import { SheetButtons } from './sheet-buttons.tsx';
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
        <SheetButtons
          world={world}
          name={routine.name}
          paper={paper}
          text={() => routineText(world, routine, day)}
        />
        <Button
          onClick={() =>
            world.save(
              fileName(routine.name, 'json'),
              'application/json',
              planFileFor(world.remembered, routine, world.today),
            )
          }
        >
          {t('plan.file.save')}
        </Button>
      </div>
      <p class="hint">{t('plan.hand-over.private')}</p>
    </Disclosure>
  );
}
