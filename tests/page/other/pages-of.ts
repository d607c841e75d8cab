import { type Roll, rolled } from './roll.ts';
import { type Half, halved, type Page } from './shop.ts';

export type Drawn = Page & { kind: string; tongue: string };

/** What a set of whole pages is drawn by: its kinds with a list and without, its shops, and the page around both. */
type Drawing<Shop extends { tag: string; title: string }> = {
  kinds: Record<string, (shop: Shop) => Page>;
  silent: Record<string, (shop: Shop) => { title?: string; html: string }>;
  seedOf(kind: string): number;
  openShop(roll: Roll, at: number, plain: boolean): Shop;
  framed(shop: Shop, main: string): string;
};

/** `count` whole pages of each kind of one half, with a list each and without any; the same ones every time. */
export function pagesOf<Shop extends { tag: string; title: string }>(by: Drawing<Shop>) {
  const each = (
    kinds: object,
    half: Half,
    count: number,
    draw: (kind: string, shop: Shop) => Page,
    plain: boolean,
  ) =>
    halved(Object.keys(kinds), half).flatMap((kind) => {
      const roll = rolled(by.seedOf(kind));
      return Array.from({ length: count }, (_, at): Drawn => {
        const shop = by.openShop(roll, at, plain);
        return { ...draw(kind, shop), kind, tongue: shop.tag };
      });
    });
  return {
    drawnPages: (half: Half, count: number): Drawn[] =>
      each(
        by.kinds,
        half,
        count,
        (kind, shop) => {
          const page = by.kinds[kind]!(shop);
          return { ...page, html: by.framed(shop, page.html) };
        },
        false,
      ),
    silentPages: (half: Half, count: number): Drawn[] =>
      each(
        by.silent,
        half,
        count,
        (kind, shop) => {
          const { title, html } = by.silent[kind]!(shop);
          return { html: by.framed({ ...shop, title: title ?? shop.title }, html), lists: [] };
        },
        true,
      ),
  };
}
