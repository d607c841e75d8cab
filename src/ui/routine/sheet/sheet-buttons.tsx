import type { RefObject } from 'preact';
import { Button } from '../../parts/controls/button.tsx';
import type { World } from '../../world.ts';
import { fileName, pngOf } from './exports.ts';
import { printSheet } from './print-sheet.tsx';
import { sheetPicture } from './sheet-picture.ts';

/** Ways to hand out a sheet as it is printed: on paper, as a picture, as text. */
export function SheetButtons(props: {
  world: World;
  name: string;
  paper: RefObject<HTMLDivElement | null>;
  text: () => string;
}) {
  const { world, name, paper, text } = props;
  const { t } = world;
  const save = (ending: string, type: string, content: string | Blob) =>
    world.save(fileName(name, ending), type, content);
  return (
    <>
      <Button onClick={() => printSheet('A4')}>{t('routine.take.a4')}</Button>
      <Button onClick={() => printSheet('letter')}>{t('routine.take.letter')}</Button>
      <Button
        onClick={() =>
          void pngOf(sheetPicture(paper.current!)).then((picture) => save('png', 'image/png', picture))
        }
      >
        {t('plan.hand-over.png')}
      </Button>
      <Button onClick={() => save('txt', 'text/plain', text())}>{t('routine.take.text')}</Button>
    </>
  );
}
