import type { PlaceName } from '../world.ts';

/** Line drawings of our own for the places, 20 × 20. */
const lines: Record<PlaceName, string> = {
  // a label with its list, one line of it marked twice
  page: 'M4 2.5H13L16 5.500V17.500H4ZM7 7H13M7 10H13M7 13H10.500M7 14.800H10.5',
  // two labels, edge to edge
  compare: 'M2.5 4H8.500V16H2.500ZM11.5 4H17.500V16H11.500ZM4.5 8H6.500M13.5 8H15.500M13.5 11H15.5',
  // beads strung on a day
  routine: 'M5 2.500V17.500M5 5H16M5 10H13M5 15H16',
  // a bottle and a jar
  products:
    'M5 7.500H9.500V17.500H3V10C3 8.5 4 8 5 7.500ZM5 7.500V3H8V7.500M12 9.500H17.500V17.500H12ZM11.5 7H18V9.5',
  // a page with a written line and a margin
  log: 'M4 2.500H16V17.500H4ZM7 2.500V17.500M9.5 7H13.500M9.5 10.500H13.500M9.5 14H11.5',
  // three strands
  hair: 'M5 2.500C8 6 2 9 5 12.500S5 17.5 5 17.500M10 2.500C13 6 7 9 10 12.500S10 17.5 10 17.500M15 2.500C18 6 12 9 15 12.500S15 17.5 15 17.5',
  // three weights on a scale's arms
  settings: 'M3 5H17M3 10H17M3 15H17M7 3V7M13 8V12M6 13V17',
};

export function PlaceIcon({ place }: { place: PlaceName }) {
  return (
    <svg class="place-icon" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <path d={lines[place]} />
    </svg>
  );
}
