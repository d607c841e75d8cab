import { createPortal } from 'preact/compat';
import { useRef, useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { Disclosure } from '../parts/disclosure.tsx';
import { SheetButtons } from '../routine/sheet/sheet-buttons.tsx';
import '../routine/routine.css';
import type { World } from '../world.ts';
import { PersonPaper } from './person-paper.tsx';
import { personSheet, personText } from './person-words.ts';

/** One person on one sheet, seen first, then printed, saved or sent. */
export function PersonSheetCard({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const [open, setOpen] = useState(false);
  return (
    <Disclosure summary={t('plan.person', { name: head.name })} open={open} onToggle={setOpen}>
      {open && <OpenSheet world={world} head={head} />}
    </Disclosure>
  );
}

function OpenSheet({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const paper = useRef<HTMLDivElement>(null);
  const sheet = personSheet(world, head);
  return (
    <>
      <section class="sheet" aria-label={t('plan.person', { name: head.name })}>
        <h3>{sheet.name}</h3>
        <PersonPaper t={t} sheet={sheet} />
      </section>
      <div class="actions">
        <SheetButtons world={world} name={head.name} paper={paper} text={() => personText(world, sheet)} />
      </div>
      <p class="hint">{t('plan.person.private', { name: head.name })}</p>
      {createPortal(
        <div class="print-sheet" ref={paper} aria-hidden="true" lang={t.lang} dir={t.dir}>
          <h1>{sheet.name}</h1>
          <PersonPaper t={t} sheet={sheet} />
        </div>,
        document.body,
      )}
    </>
  );
}
