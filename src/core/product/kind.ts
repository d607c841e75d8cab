import type { Use } from '../names/entry.ts';
import { goodsIn } from './goods.ts';
import { createKindFinder, type KindFinder, type KindWords, type Noun } from './kind-words.ts';
import { type OtherGoods, type ProductFacts, type ProductKind, usualUse } from './product.ts';

/** What the words around a product name: one kind, goods that are no single product of a wash day, or neither. */
export type Recognised = { kind: ProductKind | OtherGoods | 'unknown'; use: Use | 'none' };

type Named = Pick<ProductFacts, 'name' | 'category'>;

export type KindReader = {
  recognise(facts: Named): Recognised;
  /** The facts of a page with kind and use, where its words say them. What is known already stays. */
  withKind(facts: ProductFacts): ProductFacts;
};

/** Tells what a shop sells by its name and shelf: the noun for the form decides, not what it promises. */
export function createKindReader(words: KindWords): KindReader {
  const find = createKindFinder(words);
  const recognise = ({ name, category = '' }: Named): Recognised => {
    const title = find.fold(name);
    const shelf = find.fold(category);
    const read = kindIn(name, find);
    const goods = goodsIn({ title, shelf, parts: find.parts(name), read: read?.noun }, find);
    if (goods) return { kind: goods, use: 'none' };
    const placed = kindIn(category, find);
    // "Mask" says little of what it is for: a shelf of treatments says more.
    if (read?.kind === 'deep-conditioner' && placed?.kind.endsWith('-treatment'))
      return { kind: placed.kind, use: placed.use };
    if (read && (certain(read, find, title) || find.names('hair', title + shelf) || placed))
      return { kind: read.kind, use: read.use };
    if (read) return { kind: 'unknown', use: 'none' };
    return placed ? { kind: placed.kind, use: placed.use } : { kind: 'unknown', use: 'none' };
  };
  return {
    recognise,
    withKind(facts) {
      if (facts.kind) return { ...facts, use: facts.use ?? usualUse[facts.kind] };
      const { kind, use } = recognise(facts);
      if (kind === 'unknown') return facts;
      if (kind === 'not-hair' || kind === 'accessory' || kind === 'kit') return { ...facts, goods: kind };
      return { ...facts, kind, use: facts.use ?? (use === 'none' ? usualUse[kind] : use) };
    },
  };
}

type Read = { kind: ProductKind; use: Use; noun: Noun };

/** "Curl Cream" is plain; "Rich Cream" is a hair cream only on a shelf for hair. */
const certain = ({ kind, noun }: Read, find: KindFinder, title: string) =>
  noun.tier === 'step' ||
  forHairOnly.has(kind) ||
  (['leaveIn', 'preWash', 'hold'] as const).some((mark) => find.has(mark, title));

const forHairOnly = new Set<ProductKind>([
  'cleanser',
  'conditioner',
  'refresh-spray',
  'dry-shampoo',
  'scalp-treatment',
  'protein-treatment',
  'bond-treatment',
]);

/** The noun that decides, in the first part of the words that has one. */
export function deciding(nouns: readonly Noun[], headFirst: boolean): Noun | undefined {
  for (const tier of ['step', 'texture', 'carrier'] as const) {
    // Of two readings of the same letters the longer is meant: "cream rinse" is no rinse.
    const some = nouns
      .filter((noun) => noun.tier === tier)
      .filter(
        ({ at, to }) =>
          !nouns.some((other) => other.at <= at && other.to >= to && other.to - other.at > to - at),
      )
      .toSorted((a, b) => a.at - b.at);
    if (some.length > 0) return headFirst || some[0]!.first ? some[0] : some.at(-1);
  }
  return undefined;
}

function kindIn(text: string, find: KindFinder): Read | undefined {
  const title = find.fold(text);
  const headFirst = find.headFirst(title) || find.names('notKit', title);
  const has = (mark: Parameters<KindFinder['has']>[0]) => find.has(mark, title);
  for (const part of find.parts(text)) {
    const nouns = find.nouns(part).filter(({ kind }) => kind !== 'accessory');
    const noun = deciding(nouns, headFirst);
    if (has('dryShampoo') && noun) return { kind: 'dry-shampoo', use: 'leave-on', noun };
    if (!noun) continue;
    const kind = kindOf(noun, nouns, part, has, find);
    return { ...kind, noun };
  }
  const leaves = has('leaveIn') ? ('leave-in' as const) : has('preWash') ? ('pre-wash' as const) : undefined;
  return (
    leaves && {
      kind: leaves,
      use: usualUse[leaves],
      noun: { kind: leaves, tier: 'step', first: false, at: 0, to: 0 },
    }
  );
}

/** What a noun is beside the other words of its title. */
function kindOf(
  { kind, tier }: Noun,
  nouns: readonly Noun[],
  part: string,
  has: (mark: Parameters<KindFinder['has']>[0]) => boolean,
  find: KindFinder,
): { kind: ProductKind; use: Use } {
  const as = (is: ProductKind, use: Use = usualUse[is]) => ({ kind: is, use });
  const treats = kind === 'deep-conditioner' && tier === 'carrier';
  if (kind === 'bond-treatment' || (treats && find.has('treatmentOfBond', part))) return as('bond-treatment');
  if (kind === 'protein-treatment' || (treats && find.has('treatmentOfProtein', part) && !has('leaveIn')))
    return as('protein-treatment');
  if (kind === 'cleanser' || kind === 'rinse' || kind === 'dry-shampoo') return as(kind);
  const onScalp = find.has('scalp', part) || (['serum', 'spray'].includes(kind) && has('scalp'));
  if (onScalp && kind !== 'conditioner' && kind !== 'hairspray')
    return as('scalp-treatment', has('rinsedScalp') || has('preWash') ? 'rinse-off' : 'leave-on');
  if (kind === 'scalp-treatment')
    return as(kind, has('rinsedScalp') || has('preWash') ? 'rinse-off' : 'leave-on');
  if (has('preWash')) return as('pre-wash');
  if (find.has('cleansing', part) && !treats && kind !== 'deep-conditioner' && kind !== 'spray')
    return as('cleanser');
  if (treats && has('glaze')) return as('rinse');
  const sprays = kind === 'spray' || nouns.some((other) => other.kind === 'spray');
  if (kind === 'conditioner' && sprays) return as('leave-in');
  if (has('leaveIn') && !['oil', 'serum', 'foam', 'gel'].includes(kind)) return as('leave-in');
  if (kind === 'spray') {
    if (find.has('conditions', part)) return as('leave-in');
    if (has('refresh')) return as('refresh-spray');
    return as(has('hold') ? 'hairspray' : 'leave-in');
  }
  return as(kind as ProductKind);
}
