import { describe, expect, it } from 'vitest';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import type { FoundText } from '../../../src/contract/messages.ts';
import type { LabelMet } from '../../../src/store/remembered.ts';
import { drawShelfMark } from '../../../src/ui/describe/drawn/draw-shelf.ts';
import { saysOf } from '../../../src/ui/describe/shelf.ts';
import { translator } from '../../../src/ui/words/index.ts';
import { knowProduct } from '../../../src/use/shelf/know-product.ts';
import { labelsFor } from '../../../src/use/shelf/labels-for.ts';
import { rowOf } from '../../../src/use/shelf/row.ts';
import { labelsOfPage } from '../../../src/use/shelf/take-page.ts';
import { madeHead, madeProduct } from '../../keeping/made.ts';
import { knowing } from '../knowing.ts';

const { addresses } = shelfFacts;
const page = 'https://shop.example/products/saltgrass-gel?variant=2&utm_source=mail';
const found = (product: FoundText['product']): FoundText => ({
  id: 0,
  text: 'Aqua, Glycerin',
  via: 'heading',
  ...(product && { product }),
});

describe('the label of a product’s own page', () => {
  const met = 'https://shop.example/products/saltgrass-gel';
  it.each<[string, FoundText['product'], string[]]>([
    ['without variant and campaign', { name: 'Gel' }, [met]],
    [
      'under what the page calls its own address too',
      { name: 'Gel', url: 'https://shop.example/products/saltgrass?size=2' },
      [met, 'https://shop.example/products/saltgrass'],
    ],
    ['once where both are one', { name: 'Gel', url: `${met}?variant=1` }, [met]],
    ['not under another shop’s', { name: 'Gel', url: 'https://else.example/products/x' }, [met]],
    ['not under the front page', { name: 'Gel', url: 'https://shop.example/' }, [met]],
    ['none without a name', undefined, []],
  ])('%s', (_, product, wanted) =>
    expect(labelsOfPage(found(product), page, addresses).map(({ address }) => address)).toEqual(wanted),
  );
  it('a place of the shop that sells nothing is none', () =>
    expect(labelsOfPage(found({ name: 'Gel' }), 'https://shop.example/blogs/gel', addresses)).toEqual([]));
});

describe('labels of a shelf', () => {
  const address = 'https://shop.example/tidepool';
  const met = (readOn: string): LabelMet => ({
    address,
    text: 'Aqua',
    product: { name: 'Tidepool' },
    readOn,
  });
  const of = (labels: LabelMet[]) =>
    labelsFor([address], new Map(labels.map((each) => [each.address, each])), [madeProduct()], addresses);

  it('a kept product lights up where it was met', () => {
    expect(of([]).get(address)).toMatchObject({
      text: 'Aqua, Cetearyl Alcohol, Glycerin',
      product: { kind: 'cream', size: 200, price: 14, currency: 'EUR' },
    });
    expect(labelsFor(['https://shop.example/other'], new Map(), [madeProduct()], addresses).size).toBe(0);
  });
  it('the later reading of one page counts', () => {
    expect(of([met('2026-02-01T00:00:00.000Z')]).get(address)?.text).toBe('Aqua');
    expect(of([met('2025-02-01T00:00:00.000Z')]).get(address)?.text).toContain('Cetearyl');
  });
});

describe('a product that is for no hair', () => {
  const t = translator('en');
  const knows = knowing({ heads: [madeHead()] });
  const says = (over: Partial<LabelMet>) => {
    const known = knowProduct(knows, {
      address: 'https://shop.example/p/1',
      text: 'Aqua, Glycerin, Hydrolyzed Wheat Protein, Phenoxyethanol',
      product: { name: 'Oxbow' },
      readOn: '2026-02-01T00:00:00.000Z',
      ...over,
    })!;
    return { mark: drawShelfMark(saysOf(known, 'Oxbow', t), t), row: rowOf(known, 'Oxbow') };
  };
  it.each<[string, Partial<LabelMet>]>([
    ['by what it is called', { product: { name: 'Oxbow Hand Cream', goods: 'not-hair' } }],
    ['by the words of its page', { elsewhere: true }],
  ])('%s is said so, passes no filter and is not judged', (_, over) => {
    const { mark, row } = says(over);
    expect(mark.label).toContain(t('page.verdict.not-hair'));
    expect(JSON.stringify(mark.card)).toContain(t('page.verdict.not-hair'));
    expect(mark.passes).toEqual([]);
    expect(row).toMatchObject({ notForHair: true });
    expect(row.answer).toBeUndefined();
  });
  it('any other is judged', () => {
    const { mark, row } = says({ product: { name: 'Oxbow Gel', kind: 'gel' } });
    expect(mark.label).not.toContain(t('page.verdict.not-hair'));
    expect(row.answer).toBeDefined();
  });
});
