import { type LabelText, type Product, type ProductFacts, type ProductSource, usualUse } from './product.ts';

/** What a page (or the user's paste) says of one product. */
export type MetNow = { facts: ProductFacts; text: string; now: string };

/** Letters and digits only, without accents, case or sizes: "Élan Gel, 250 ml" and "elan gel" are one name. */
export const plainName = (name: string) =>
  name
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/\b\d+([.,]\d+)?\s*(ml|l|cl|g|kg|oz|fl\.?\s*oz)\b\.?/g, ' ')
    .replace(/[^\p{Letter}\p{Number}]+/gu, ' ')
    .trim();

/** The page of a product without what changes from visit to visit (query, fragment, last slash). */
export function pageAddress(url: string | undefined): string | undefined {
  const [, host, path] = url?.match(/^([a-z]+:\/\/[^/?#]+)([^?#]*)/i) ?? [];
  return host && host.toLowerCase() + path!.replace(/\/+$/, '');
}

/** Lists that differ in spacing, case or a last full stop are one list. */
export const plainLabel = (text: string) =>
  text
    .replace(/\s+/g, ' ')
    .replace(/\s*,\s*/g, ', ')
    .replace(/[.,\s]+$/, '')
    .trim()
    .toLowerCase();

type Named = Pick<Product, 'name' | 'labels' | 'sources'> & { maker?: string };

/** What a product is called without its maker and size: only products of one such name can be the same. */
export const nameWithoutMaker = ({ name, maker }: { name: string; maker?: string }) => {
  const plain = plainName(name);
  const by = maker ? plainName(maker) : '';
  return by && plain.startsWith(`${by} `) ? plain.slice(by.length + 1) : plain;
};

/**
 * Whether this is the product kept: on the same page; or of the same maker under the same name; or, where one
 * of the makers is not told, under the same name with the same list. Different makers are never one product.
 */
export function isSameProduct(kept: Named, { facts, text }: Pick<MetNow, 'facts' | 'text'>): boolean {
  const makers = [kept.maker, facts.maker].map((maker) => maker && plainName(maker));
  const oneMaker = makers[0] && makers[1] ? makers[0] === makers[1] : undefined;
  if (oneMaker === false) return false;
  const names = [nameWithoutMaker(kept), nameWithoutMaker(facts)];
  const sameName = names[0] === names[1] && names[0] !== '';
  const page = pageAddress(facts.url);
  // One page may sell several products (a set, a shelf): the name has to agree as well.
  if (page && sameName && kept.sources.some(({ url }) => pageAddress(url) === page)) return true;
  if (!sameName) return false;
  return (
    oneMaker === true ||
    (text !== '' && kept.labels.some((label) => plainLabel(label.text) === plainLabel(text)))
  );
}

const byName = new WeakMap<readonly Product[], Map<string, Product[]>>();

/** Products by their bare names, in order: only those of one such name can be the same. */
function namedAlike(products: readonly Product[], name: string): readonly Product[] {
  const known = byName.get(products) ?? Map.groupBy(products, nameWithoutMaker);
  byName.set(products, known);
  return known.get(name) ?? [];
}

/** The product kept that this one is, if any. */
export const findSame = (products: readonly Product[], met: Pick<MetNow, 'facts' | 'text'>) =>
  namedAlike(products, nameWithoutMaker(met.facts)).find((product) => isSameProduct(product, met));

export type Kept = { product: Product; happened: 'new' | 'same' | 'source-added' | 'label-changed' };

/**
 * Keeps what was met: as a new product under `id`, or merged into the one it is; `as` is the product the user said
 * it is, which takes the page's name then. Owned only when told so.
 */
export function keepMet(
  products: readonly Product[],
  met: MetNow,
  id: string,
  owned?: boolean,
  as?: string,
): Kept {
  const { facts, text, now } = met;
  const said = as === undefined ? undefined : products.find((product) => product.id === as);
  const kept = said ? renamed(said, facts) : findSame(products, met);
  if (!kept) {
    const use = facts.use ?? (facts.kind && usualUse[facts.kind]);
    const product: Product = {
      id,
      name: facts.name,
      ...only(facts, ['maker', 'kind', 'goods', 'size', 'sizeUnit']),
      ...(use && { use }),
      labels: text.trim() ? [labelOf(met)] : [],
      sources: sourceOf(met),
      owned: owned ?? false,
      notes: '',
      added: now,
    };
    return { product, happened: 'new' };
  }
  const { labels, changed } = withLabel(kept.labels, met);
  const { sources, added } = withSource(kept.sources, met);
  const product: Product = {
    // What the user corrected stays; only gaps are filled.
    ...only(facts, ['maker', 'kind', 'use', 'size', 'sizeUnit']),
    ...kept,
    labels,
    sources,
    owned: owned ?? kept.owned,
  };
  return { product, happened: changed ? 'label-changed' : added ? 'source-added' : 'same' };
}

/** Called as its page calls it; its own name is noted. */
function renamed(kept: Product, { name, maker }: ProductFacts): Product {
  const notes = plainName(kept.name) === plainName(name) ? [kept.notes] : [kept.notes, kept.name];
  return { ...kept, name, ...(maker && { maker }), notes: notes.filter(Boolean).join('\n') };
}

const labelOf = ({ facts, text, now }: MetNow): LabelText => ({
  text,
  seen: now,
  ...(facts.url && { url: facts.url }),
});

const sourceOf = ({ facts, now }: MetNow): ProductSource[] =>
  facts.url
    ? [
        {
          url: facts.url,
          ...only(facts, ['price', 'currency', 'language', 'variant', 'size', 'sizeUnit']),
          seen: now,
        },
      ]
    : [];

/** Adds a label that is new; all earlier ones are kept. */
function withLabel(labels: LabelText[], met: MetNow): { labels: LabelText[]; changed: boolean } {
  if (!met.text.trim()) return { labels, changed: false };
  const at = labels.findIndex(({ text }) => plainLabel(text) === plainLabel(met.text));
  if (at < 0) return { labels: [labelOf(met), ...labels], changed: labels.length > 0 };
  // An older list on another shop's page is old stock, not news; on the page of the newest it is the list again.
  if (at === 0 || pageAddress(labels[0]!.url) !== pageAddress(met.facts.url))
    return { labels, changed: false };
  return { labels: [labelOf(met), ...labels.toSpliced(at, 1)], changed: true };
}

function withSource(sources: ProductSource[], met: MetNow): { sources: ProductSource[]; added: boolean } {
  const [source] = sourceOf(met);
  if (!source) return { sources, added: false };
  const at = sources.findIndex(
    ({ url, variant }) => pageAddress(url) === pageAddress(source.url) && variant === source.variant,
  );
  if (at < 0) return { sources: [...sources, source], added: true };
  return { sources: sources.with(at, source), added: false };
}

/** Two products found to be one: labels and sources of both, newest label first; `kept` wins where both answer. */
export function mergeProducts(kept: Product, other: Product): Product {
  const labels = [...kept.labels];
  for (const label of other.labels)
    if (!labels.some(({ text }) => plainLabel(text) === plainLabel(label.text))) labels.push(label);
  const sources = [...kept.sources];
  for (const source of other.sources)
    if (
      !sources.some(
        ({ url, variant }) => pageAddress(url) === pageAddress(source.url) && variant === source.variant,
      )
    )
      sources.push(source);
  const notes = [kept.notes, other.notes].filter((note, i, all) => note && all.indexOf(note) === i);
  return {
    ...other,
    ...kept,
    labels: labels.toSorted((a, b) => b.seen.localeCompare(a.seen)),
    sources,
    owned: kept.owned || other.owned,
    notes: notes.join('\n'),
    added: [kept.added, other.added].toSorted()[0]!,
  };
}

function only<T extends object, K extends keyof T>(from: T, keys: K[]): Pick<T, K> {
  return Object.fromEntries(
    keys.filter((key) => from[key] !== undefined).map((key) => [key, from[key]]),
  ) as Pick<T, K>;
}
