// A third set of whole pages, written before anything of the finder was opened: shapes of shops in fourteen languages,
// and pages that hold no list. Kinds are halved: `seen` may be looked at when it is missed, `kept` is only ever counted.
import { type Roll, rolled } from '../other/roll.ts';
import { type Half, halved, type Page } from '../other/shop.ts';
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
export type Drawn = Page & { kind: string; tongue: string };

const seedOf = (kind: string) =>
  [...kind].reduce((sum, letter) => (sum * 37 + letter.charCodeAt(0)) | 0, 2_511);

function openShop(roll: Roll, at: number, plain: boolean): Shop {
  const tags = Object.keys(tongues);
  const tag = roll.next() < 0.25 ? 'en' : tags[at % tags.length]!;
  const tongue = tongues[tag]!;
  return { roll, tag, tongue, title: calledBy(roll, tongue), plain };
}

/** `count` whole pages of each kind of one half. */
export const drawnPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(kinds), half).flatMap((kind) => {
    const roll = rolled(seedOf(kind));
    return Array.from({ length: count }, (_, at) => {
      const shop = openShop(roll, at, false);
      const page = kinds[kind]!(shop);
      return { ...page, html: framed(shop, page.html), kind, tongue: shop.tag };
    });
  });

/** The same of pages that hold no list. */
export const silentPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(silent), half).flatMap((kind) => {
    const roll = rolled(seedOf(kind));
    return Array.from({ length: count }, (_, at) => {
      const shop = openShop(roll, at, true);
      const { title, html } = silent[kind]!(shop);
      return {
        html: framed({ ...shop, title: title ?? shop.title }, html),
        lists: [],
        kind,
        tongue: shop.tag,
      };
    });
  });
