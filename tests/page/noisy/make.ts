// A fourth set of whole pages, in twenty languages: leftovers of other systems, forms, components and slots, and titles
// of all kinds before the list. Written before anything of the finder was opened; every second kind is kept aside.
import { type Roll, rolled } from '../other/roll.ts';
import { type Half, halved, type Page } from '../other/shop.ts';
import { held, type Kind } from './kinds-held.ts';
import { worded } from './kinds-worded.ts';
import { calledBy, framed, type Shop } from './shop.ts';
import { silent } from './silent.ts';
import { tongues } from './tongues.ts';

const kinds: Record<string, Kind> = { ...held, ...worded };
export type Drawn = Page & { kind: string; tongue: string };

const seedOf = (kind: string) =>
  [...kind].reduce((sum, letter) => (sum * 41 + letter.charCodeAt(0)) | 0, 7_013);

function openShop(roll: Roll, at: number): Shop {
  const tags = Object.keys(tongues);
  const tag = roll.next() < 0.2 ? 'en' : tags[at % tags.length]!;
  const tongue = tongues[tag]!;
  return { roll, tag, tongue, title: calledBy(roll, tongue) };
}

/** `count` whole pages of each kind of one half. */
export const drawnPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(kinds), half).flatMap((kind) => {
    const roll = rolled(seedOf(kind));
    return Array.from({ length: count }, (_, at) => {
      const shop = openShop(roll, at);
      const page = kinds[kind]!(shop);
      return { ...page, html: framed(shop, page.html), kind, tongue: shop.tag };
    });
  });

/** The same of pages that hold no list. */
export const silentPages = (half: Half, count: number): Drawn[] =>
  halved(Object.keys(silent), half).flatMap((kind) => {
    const roll = rolled(seedOf(kind));
    return Array.from({ length: count }, (_, at) => {
      const shop = openShop(roll, at);
      const { title, html } = silent[kind]!(shop);
      return {
        html: framed({ ...shop, title: title ?? shop.title }, html),
        lists: [],
        kind,
        tongue: shop.tag,
      };
    });
  });
