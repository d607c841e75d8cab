// Pages of shops nobody here looked at: written before the finder was, from open storefront templates and memory.
// Kinds and wordings are halved: `kept` was only counted until `tests/page/apart/` took its place; now both may be looked at.
import { built } from './kinds-built.ts';
import { told } from './kinds-told.ts';
import { rolled } from './roll.ts';
import { framed, type Half, halved, openShop, type Page } from './shop.ts';
import { silent } from './silent-kinds.ts';

const kinds = { ...built, ...told };
export const kindNames = Object.keys(kinds);
export const silentNames = Object.keys(silent);
export type Drawn = Page & { kind: string; tongue: string };

const seedOf = (kind: string, half: Half) =>
  [...kind, half].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) | 0, 7);

/** `count` whole pages of each kind of one half. */
export function drawnPages(half: Half, count: number): Drawn[] {
  return halved(kindNames, half).flatMap((kind) => {
    const roll = rolled(seedOf(kind, half));
    return Array.from({ length: count }, () => {
      const shop = openShop(roll, half);
      const page = kinds[kind]!(shop);
      return { ...page, html: framed(shop, page.html), kind, tongue: shop.tongue };
    });
  });
}

/** The same of pages that hold no list. */
export function silentPages(half: Half, count: number): Drawn[] {
  return halved(silentNames, half).flatMap((kind) => {
    const roll = rolled(seedOf(kind, half));
    return Array.from({ length: count }, () => {
      const shop = openShop(roll, half);
      return { html: framed(shop, silent[kind]!(shop)), lists: [], kind, tongue: shop.tongue };
    });
  });
}
