// Shelves of the invented shop that its own script builds (public/grids.js), over products of the rack.
import { plain } from './html.ts';
import { pageOf } from './layout.ts';
import { rackRow } from './rack.ts';

const rowsFrom = (first: number, n: number) => Array.from({ length: n }, (_, i) => rackRow(first + i));
const withScript = { end: '<script src="/grids.js" defer></script>' };
const held = (n: number) =>
  `<script type="application/json" id="rows">${JSON.stringify(rowsFrom(100, n)).replaceAll('<', '\\u003c')}</script>`;

/** Rooms that a route of the page's own leads to: two shelves, and one page that is none. */
const rooms: Record<string, { title: string; products?: ReturnType<typeof rowsFrom>; words?: string }> = {
  creams: { title: 'The cream room', products: rowsFrom(200, 12) },
  gels: { title: 'The gel room', products: rowsFrom(300, 12) },
  hall: { title: 'The hall', words: 'Two rooms open off the hall. Wipe your feet.' },
};
const doors = Object.entries(rooms)
  .map(([id, { title }]) => `<a data-door href="/rooms/${id}">${plain(title)}</a>`)
  .join(' · ');

/** `/grids/virtual?n=400`, `/grids/endless`, `/rooms/creams`. */
export function gridPage(first: string, name: string, n: number): string | undefined {
  if (first === 'rooms' && rooms[name])
    return pageOf({
      title: 'Rooms',
      body: `<p class="doors">${doors}</p><div id="room"></div>`,
      ...withScript,
    });
  if (name !== 'virtual' && name !== 'endless') return undefined;
  return pageOf({
    title: 'A grid',
    body: `<h1>A grid</h1><ul class="goods" id="${name}"></ul><p id="foot">The foot of the page.</p>${held(n)}`,
    ...withScript,
  });
}

/** What a room holds, for the page's script. */
export const roomPart = (name: string) => rooms[name];
