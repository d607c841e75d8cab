import { createPortal } from 'preact/compat';
import { useRef, useState } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { Button } from '../parts/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { fileName, pngOf } from '../routine/exports.ts';
import { printSheet } from '../routine/print-sheet.tsx';
import { sheetPicture } from '../routine/sheet-picture.ts';
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
      {open && <Sheet world={world} head={head} />}
    </Disclosure>
  );
}

function Sheet({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const paper = useRef<HTMLDivElement>(null);
  const sheet = personSheet(world, head);
  const save = (ending: string, type: string, content: string | Blob) =>
    world.save(fileName(head.name, ending), type, content);
  return (
    <>
      <section class="sheet" aria-label={t('plan.person', { name: head.name })}>
        <h3>{sheet.name}</h3>
        <PersonPaper t={t} sheet={sheet} />
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
        <Button onClick={() => save('txt', 'text/plain', personText(world, sheet))}>
          {t('routine.take.text')}
        </Button>
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
