import { describe, expect, it } from 'vitest';
import kindWords from '../../../dictionary/kinds.json' with { type: 'json' };
import { shelfFacts } from '../../../dictionary/shelf.ts';
import type { ShelfPage } from '../../../src/contract/shelf.ts';
import { createKindReader } from '../../../src/core/product/kind.ts';
import type { KindWords } from '../../../src/core/product/kind-words.ts';
import type { ProductFacts } from '../../../src/core/product/product.ts';
import type { ListIn } from '../../../src/find/lists-in.ts';
import { takePage } from '../../../src/use/shelf/take-page.ts';
import { noClues } from '../../find/no-clues.ts';

const address = 'https://shop.example/products/saltgrass-gel';
const page = (more: Partial<ShelfPage> = {}): ShelfPage => ({
  address,
  name: 'Saltgrass Gel',
  at: address,
  texts: [],
  clues: noClues({ base: address }),
  letters: 5000,
  asksPassword: false,
  ...more,
});
const list = (text: string, name?: string): ListIn => ({
  text,
  via: 'heading',
  places: [],
  ...(name && { product: { name } }),
});
const take = (over: Partial<ShelfPage>, lists: ListIn[], facts?: ProductFacts) =>
  takePage(page(over), { lists, facts }, createKindReader(kindWords as KindWords), shelfFacts);

describe('a page that came after a press', () => {
  it('gives its label, under the address asked for', () => {
    expect(
      take({}, [list('Aqua, Glycerin')], { name: 'Saltgrass Curl Gel', url: `${address}?variant=1` }),
    ).toMatchObject({
      address,
      text: 'Aqua, Glycerin',
      product: { name: 'Saltgrass Curl Gel', kind: 'gel', url: address },
    });
  });
  it('a set gives the list that is named like its card, or says that it holds several', () => {
    const lists = [list('Aqua, A', 'Oxbow Cleanser'), list('Aqua, B', 'Saltgrass Styling Gel')];
    expect(take({}, lists)).toMatchObject({ text: 'Aqua, B' });
    expect(take({ name: 'The Tidal Set' }, lists)).toEqual({ why: 'several' });
  });
  it.each<[string, Partial<ShelfPage>, ListIn[], ProductFacts | undefined, string]>([
    ['asks to log in', { letters: 700, asksPassword: true }, [], undefined, 'login'],
    ['builds itself by script', { letters: 80 }, [], undefined, 'by-script'],
    ['holds no list', { letters: 9000, asksPassword: true }, [], undefined, 'no-list'],
    [
      'led to another product',
      { at: 'https://shop.example/products/oxbow' },
      [list('Aqua')],
      { name: 'Oxbow Cleanser' },
      'other-product',
    ],
    [
      'says it is another product',
      {},
      [list('Aqua')],
      { name: 'Oxbow Cleanser', url: 'https://shop.example/products/oxbow' },
      'other-product',
    ],
  ])('%s', (_, over, lists, facts, why) => expect(take(over, lists, facts)).toEqual({ why }));
  it('a redirect to the same product in another language or under another address is that product', () => {
    expect(
      take({ at: 'https://shop.example/de/products/saltgrass-gel-2' }, [list('Aqua')], {
        name: 'Saltgrass Gel 200 ml',
      }),
    ).toMatchObject({ address });
  });
});
