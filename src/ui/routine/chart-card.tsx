import { useEffect, useRef, useState } from 'preact/hooks';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { WideDrawing } from '../charts/drawing.tsx';
import { pictureFile } from '../charts/picture-file.ts';
import { WashDayChart } from '../charts/wash-day-chart.tsx';
import { chartRows, totalWords } from '../charts/wash-day-rows.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { usePrinting } from '../parts/use-printing.ts';
import { InTurn } from '../parts/waiting/in-turn.tsx';
import type { World } from '../world.ts';
import { takesOf } from './plan/takes.ts';
import { fileName, pngOf, productNames, routineCsv } from './sheet/exports.ts';
import { HandOver } from './sheet/hand-over.tsx';
import { PrintSheet } from './sheet/print-sheet.tsx';

const roomForNotes = 620;

/** The wash day in one picture, the same in words, and ways to take it along. */
export function ChartCard({ world, routine, day }: { world: World; routine: Routine; day: WashDay }) {
  const { t } = world;
  const figure = useRef<HTMLElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const [wide, setWide] = useState(false);
  // On paper a tall picture would not fit below the steps, nor on any page.
  const printing = usePrinting();
  const names = productNames(world, routine);
  useEffect(() => {
    const box = figure.current;
    if (!box || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(() => setWide(box.clientWidth >= roomForNotes));
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  const name = (ending: string) => fileName(routine.name, ending);
  const picture = () => pictureFile(sheet.current!.querySelector('svg')!);
  const rows = chartRows(t, routine, day, names);
  return (
    <Card title={t('routine.chart.title')} id="wash-day">
      <figure class="stack" ref={figure}>
        <WideDrawing label={t('routine.chart.title')}>
          <WashDayChart
            t={t}
            routine={routine}
            day={day}
            names={names}
            wide={wide || printing}
            takes={takesOf(world, routine)}
          />
        </WideDrawing>
      </figure>
      <Disclosure summary={t('routine.words')}>
        <ol class="words-beside">
          {rows.map(({ id, words, figures }) => (
            <li key={id}>
              {words}
              {figures.map((figure) => (
                <p key={figure} class="hint">
                  {figure}
                </p>
              ))}
            </li>
          ))}
        </ol>
        <p>{totalWords(t, day.stays.day)}</p>
        <p class="hint">{t('routine.chart.caption')}</p>
      </Disclosure>
      <Disclosure summary={t('routine.take')}>
        <div class="actions">
          <Button onClick={() => world.save(name('svg'), 'image/svg+xml', picture())}>
            {t('routine.take.svg')}
          </Button>
          <Button
            onClick={() => void pngOf(picture()).then((blob) => world.save(name('png'), 'image/png', blob))}
          >
            {t('routine.take.png')}
          </Button>
          <Button
            onClick={() =>
              void routineCsv(world, routine, day).then((csv) => world.save(name('csv'), 'text/csv', csv))
            }
          >
            {t('routine.take.csv')}
          </Button>
        </div>
      </Disclosure>
      <HandOver world={world} routine={routine} day={day} paper={sheet} />
      <InTurn late>
        <PrintSheet world={world} routine={routine} day={day} sheet={sheet} />
      </InTurn>
    </Card>
  );
}
