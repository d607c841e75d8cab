import { fixedAt } from '../paint/where/visibility.ts';

const away = 12; // from the edges of the view, and from what the page keeps there

type View = { innerWidth: number; innerHeight: number };
type Spot = { atFoot: boolean; atRight: boolean; from: number };

/** Corners of the view, best first: at the foot, on the side where reading starts. */
const corners = (rtl: boolean): Spot[] =>
  [true, false].flatMap((atFoot) => [
    { atFoot, atRight: rtl, from: away },
    { atFoot, atRight: !rtl, from: away },
  ]);

/**
 * Puts the bar into the first corner where the page keeps nothing fixed; where it does in each, above what it keeps
 * at the foot; into the best corner where there is no room for that either.
 */
export function dockBar(bar: HTMLElement, view: View): void {
  const { width, height } = bar.getBoundingClientRect();
  /** What the page keeps fixed where the bar would stand. */
  const under = ({ atFoot, atRight, from }: Spot): Element[] => {
    const left = atRight ? view.innerWidth - away - width : away;
    const top = atFoot ? view.innerHeight - from - height : from;
    const across = [left + 2, left + width / 2, left + width - 2];
    return [top + 2, top + height - 2].flatMap((y) => across.flatMap((x) => fixedAt(x, y) ?? []));
  };
  const isFree = (spot: Spot) => under(spot).length === 0;
  const all = corners(bar.dir === 'rtl');
  const above = () =>
    all
      .filter((spot) => spot.atFoot)
      .map((spot) => {
        const tops = under(spot).map((each) => each.getBoundingClientRect().top);
        return { ...spot, from: view.innerHeight - Math.min(...tops) + away };
      })
      .filter(({ from }) => from + height < view.innerHeight / 2);
  const { atFoot, atRight, from } = all.find(isFree) ?? above().find(isFree) ?? all[0]!;
  const side = (wanted: boolean, by = away) => (wanted ? `${by}px` : 'auto');
  bar.style.setProperty(
    'inset',
    [side(!atFoot), side(atRight), side(atFoot, from), side(!atRight)].join(' '),
  );
}
