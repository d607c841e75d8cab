import type { RefObject } from 'preact';
import { createPortal } from 'preact/compat';
import type { WashDay } from '../../../core/wash-day/add-up.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { WashDayChart } from '../../charts/wash-day-chart.tsx';
import type { World } from '../../world.ts';
import { Findings } from '../findings.tsx';
import { takesOf } from '../plan/takes.ts';
import { productNames } from './exports.ts';
import { SheetSteps, SheetWatch } from './sheet.tsx';
import { sheetOf } from './sheet-words.ts';

/** Prints the sheet alone, on paper of a size. */
export function printSheet(size: 'A4' | 'letter') {
  const page = document.createElement('style');
  page.textContent = `@page { size: ${size} portrait; margin: 14mm; }`;
  document.head.append(page);
  document.documentElement.dataset.print = 'sheet';
  const done = () => {
    page.remove();
    delete document.documentElement.dataset.print;
  };
  addEventListener('afterprint', done, { once: true });
  print();
}

/** For a bathroom wall or a client: the steps large, the picture, the open findings. Seen on paper only. */
export function PrintSheet(props: {
  world: World;
  routine: Routine;
  day: WashDay;
  sheet: RefObject<HTMLDivElement | null>;
}) {
  const { world, routine, day, sheet } = props;
  const { t } = world;
  const names = productNames(world, routine);
  const words = sheetOf(world, routine, day);
  return createPortal(
    <div class="print-sheet" ref={sheet} aria-hidden="true" lang={t.lang} dir={t.dir}>
      <h1>{routine.name}</h1>
      <SheetSteps t={t} sheet={words} />
      <WashDayChart
        t={t}
        routine={routine}
        day={day}
        names={names}
        wide
        takes={takesOf(world, routine)}
        title={routine.name}
      />
      <Findings t={t} findings={day.findings.filter(({ answer }) => answer !== 'suits')} />
      <SheetWatch t={t} sheet={words} />
      <p class="hint">{t('routine.caution')}</p>
    </div>,
    document.body,
  );
}
