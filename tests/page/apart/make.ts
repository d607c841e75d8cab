// A third set of whole pages, written before anything of the finder was opened: shapes of shops in fourteen languages,
// and pages that hold no list. Kinds are halved: `seen` may be looked at when it is missed, `kept` is only ever counted.
import { pagesOf } from '../other/pages-of.ts';
import type { Roll } from '../other/roll.ts';
import { type Kind, marked } from './kinds-marked.ts';
import { printed } from './kinds-printed.ts';
import { several } from './kinds-several.ts';
import { calledBy, framed, type Shop } from './shop.ts';
import { silent } from './silent.ts';
import { north } from './tongues-north.ts';
import { south } from './tongues-south.ts';
import { west } from './tongues-west.ts';

const tongues = { ...west, ...south, ...north };
const kinds: Record<string, Kind> = { ...marked, ...printed, ...several };

const seedOf = (kind: string) =>
  [...kind].reduce((sum, letter) => (sum * 37 + letter.charCodeAt(0)) | 0, 2_511);

function openShop(roll: Roll, at: number, plain: boolean): Shop {
  const tags = Object.keys(tongues);
  const tag = roll.next() < 0.25 ? 'en' : tags[at % tags.length]!;
  const tongue = tongues[tag]!;
  return { roll, tag, tongue, title: calledBy(roll, tongue), plain };
}

export const { drawnPages, silentPages } = pagesOf<Shop>({ kinds, silent, seedOf, openShop, framed });
