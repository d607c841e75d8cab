import { deciding } from './kind.ts';
import type { KindFinder, Noun } from './kind-words.ts';
import type { OtherGoods } from './product.ts';

type Words = {
  title: string;
  shelf: string;
  parts: readonly string[];
  /** The noun by which the title names a kind of product, if any. */
  read: Noun | undefined;
};

/** Is it something else than one product of a wash day? */
export function goodsIn({ title, shelf, parts, read }: Words, find: KindFinder): OtherGoods | undefined {
  const main = parts[0] ?? title;
  const process =
    [...parts].find((part) => find.nouns(part).length > 0 || find.names('process', part)) ?? main;
  if (find.names('never', title) || (!read && find.names('swallowed', title))) return 'not-hair';
  const scalp = find.has('scalp', title);
  // A mask for bleached hair is no bleach.
  const chemical = find.names('process', process) && !find.has('afterwards', title);
  // A colour that comes with a conditioner is a colour.
  const alone = find.nouns(process).length === 0;
  if (chemical && (alone || read?.tier !== 'step') && !scalp) return 'not-hair';
  const things = find.nouns(main);
  const onlyThings = things.length > 0 && things.every(({ kind }) => kind === 'accessory');
  if (find.names('kit', main) && !onlyThings && !find.names('notKit', title)) return 'kit';
  if (isAccessory(parts, title, find)) return 'accessory';
  if (isKit(title, parts, find)) return 'kit';
  const hairy = scalp || find.names('hair', title);
  const hairOnly = read?.tier === 'step' && ['cleanser', 'conditioner', 'hairspray'].includes(read.kind);
  const place =
    find.names('elsewhere', shelf) || find.names('never', shelf) || find.names('swallowed', shelf);
  const onHairShelf = find.names('hair', shelf) && !place;
  if (find.names('elsewhere', title) && !hairy && !hairOnly && !onHairShelf) return 'not-hair';
  if (place && !hairy && !find.names('hair', shelf) && !hairOnly) return 'not-hair';
  return undefined;
}

/** A comb is no conditioner: "Shampoo Comb", "peigne à shampooing". */
function isAccessory(parts: readonly string[], title: string, find: KindFinder): boolean {
  for (const part of parts) {
    const nouns = find.nouns(part);
    if (nouns.length === 0) continue;
    const things = nouns.filter(({ kind }) => kind === 'accessory');
    if (things.length === 0) return false;
    const step = nouns.map((noun) => ({ ...noun, tier: 'step' as const }));
    return deciding(step, find.headFirst(title))?.kind === 'accessory';
  }
  return false;
}

/** A set, or several steps joined: "Shampoo 300 ml + Mask 200 ml". */
function isKit(title: string, parts: readonly string[], find: KindFinder): boolean {
  if (find.names('notKit', title)) return false;
  if (parts.some((part) => find.names('kit', part))) return true;
  const joined = title.split(/ & | and | und | et | y | e | en | i | и | och | ja | ve | と /u);
  // "Pre-shampoo" names no shampoo.
  const before = find.has('preWash', title);
  const steps = joined.map((piece) =>
    find
      .nouns(` ${piece.trim()} `)
      .filter(({ tier, kind }) => tier === 'step' && kind !== 'accessory' && !(before && kind === 'cleanser'))
      .map(({ kind }) => kind),
  );
  const distinct = new Set(steps.filter((kinds) => kinds.length > 0).map((kinds) => kinds.at(-1)));
  return steps.filter((kinds) => kinds.length > 0).length > 1 && distinct.size > 1;
}
