import { isFixedAt } from '../paint/visibility.ts';

const away = 12; // from the edges of the view

type Corner = { atFoot: boolean; atRight: boolean };

/** Corners of the view, best first: at the foot, on the side where reading starts. */
const corners = (rtl: boolean): Corner[] =>
  [true, false].flatMap((atFoot) => [
    { atFoot, atRight: rtl },
    { atFoot, atRight: !rtl },
  ]);

/** Puts the bar into the first corner where the page keeps nothing fixed; into the best one where it does everywhere. */
export function dockBar(bar: HTMLElement, view: { innerWidth: number; innerHeight: number }): void {
  const { width, height } = bar.getBoundingClientRect();
  const all = corners(bar.dir === 'rtl');
  const isFree = ({ atFoot, atRight }: Corner) => {
    const left = atRight ? view.innerWidth - away - width : away;
    const top = atFoot ? view.innerHeight - away - height : away;
    const across = [left + 2, left + width / 2, left + width - 2];
    return [top + 2, top + height - 2].every((y) => across.every((x) => !isFixedAt(x, y)));
  };
  const { atFoot, atRight } = all.find(isFree) ?? all[0]!;
  const side = (wanted: boolean) => (wanted ? `${away}px` : 'auto');
  bar.style.setProperty('inset', [!atFoot, atRight, atFoot, !atRight].map(side).join(' '));
}
