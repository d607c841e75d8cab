// A fourth set of whole pages, in twenty languages: leftovers of other systems, forms, components and slots, and titles
// of all kinds before the list. Written before anything of the finder was opened; every second kind is kept aside.
import { pagesOf } from '../other/pages-of.ts';
import type { Roll } from '../other/roll.ts';
import { held, type Kind } from './kinds-held.ts';
import { worded } from './kinds-worded.ts';
import { calledBy, framed, type Shop } from './shop.ts';
import { silent } from './silent.ts';
import { tongues } from './tongues.ts';

const kinds: Record<string, Kind> = { ...held, ...worded };

const seedOf = (kind: string) =>
  [...kind].reduce((sum, letter) => (sum * 41 + letter.charCodeAt(0)) | 0, 7_013);

function openShop(roll: Roll, at: number): Shop {
  const tags = Object.keys(tongues);
  const tag = roll.next() < 0.2 ? 'en' : tags[at % tags.length]!;
  const tongue = tongues[tag]!;
  return { roll, tag, tongue, title: calledBy(roll, tongue) };
}

export const { drawnPages, silentPages } = pagesOf<Shop>({ kinds, silent, seedOf, openShop, framed });
