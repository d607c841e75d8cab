import type { Product } from '../../core/product/product.ts';
import { isSameProduct, mergeProducts, nameWithoutMaker } from '../../core/product/same-product.ts';
import {
  type Change,
  type LabelMet,
  type Remembered,
  type Thing,
  type ThingOf,
  things,
} from '../remembered.ts';
import { same } from '../three-way.ts';
import type { Everything } from './everything.ts';

export type ImportHow = 'merge' | 'replace';

/** What an import would do to one kind of thing, to be shown before it is done. */
export type ImportTally = {
  thing: Thing | 'photos' | 'readAs' | 'labelsMet' | 'settings';
  added: number;
  changed: number;
  removed: number;
  same: number;
  /** Names of what is changed or removed, for the user to see. */
  changedNames: string[];
  removedNames: string[];
};

export type ImportPlan = { how: ImportHow; changes: Change[]; tallies: ImportTally[] };

/** What is there now, as far as an import needs it. */
export type There = Pick<Everything, 'photos' | 'labelsMet'> & Remembered;

/**
 * The changes by which a file is taken in. `merge` adds what is missing, makes one of products met in both, and
 * takes the file's word where both know a thing; `replace` also removes what the file does not hold. Nothing is
 * done here: the changes are one batch, with a copy of what was there before it.
 */
export function planImport(file: Everything, there: There, how: ImportHow): ImportPlan {
  const changes: Change[] = [{ do: 'snapshot' }];
  const { products, routines, log, settings } = how === 'merge' ? merged(file, there) : file;
  const wanted: Remembered = { ...file, products, routines, log, settings };
  const tallies: ImportTally[] = [];
  for (const thing of things) {
    const { tally, made } = of(thing, wanted[thing], there[thing], how);
    tallies.push(tally);
    changes.push(...made);
  }
  const photos = record('photos', file.photos, there.photos, how);
  const readAs = record('readAs', file.readAs, there.readAs, how);
  for (const [key, data] of photos.set) changes.push({ do: 'photo', key, data });
  for (const [printed, name] of readAs.set) changes.push({ do: 'read-as', printed, name });
  const met = record('labelsMet', byAddress(file.labelsMet), byAddress(there.labelsMet), how, isOlder);
  for (const [address, entry] of met.set) changes.push({ do: 'label-met', address, entry });
  tallies.push(photos.tally, readAs.tally, met.tally);
  const unset = Object.keys(there.settings).filter((key) => !(key in settings));
  const sameSettings = same(settings, there.settings);
  if (!sameSettings)
    changes.push({ do: 'set', settings, ...(how === 'replace' && unset.length > 0 && { unset }) });
  tallies.push({ ...nothing('settings'), [sameSettings ? 'same' : 'changed']: 1 });
  return { how, changes, tallies };
}

const nothing = (thing: ImportTally['thing']): ImportTally => ({
  thing,
  added: 0,
  changed: 0,
  removed: 0,
  same: 0,
  changedNames: [],
  removedNames: [],
});

type Item = ThingOf[Thing];
const itemId = (item: Item) => ('origin' in item ? item.origin : item.id);
const nameOf = (item: Item) => ('origin' in item ? item.origin : 'name' in item ? item.name : item.date);

function of(thing: Thing, wanted: readonly Item[], there: readonly Item[], how: ImportHow) {
  const tally = nothing(thing);
  const made: Change[] = [];
  const before = new Map(there.map((item) => [itemId(item), item]));
  for (const item of wanted) {
    const was = before.get(itemId(item));
    before.delete(itemId(item));
    if (was && same(was, item)) {
      tally.same++;
      continue;
    }
    made.push({ do: 'put', thing, value: item } as Change);
    if (was) tally.changedNames.push(nameOf(was));
    tally[was ? 'changed' : 'added']++;
  }
  if (how === 'replace')
    for (const [id, item] of before) {
      made.push({ do: 'remove', thing, id });
      tally.removed++;
      tally.removedNames.push(nameOf(item));
    }
  return { tally, made };
}

const byAddress = (met: readonly LabelMet[]) => Object.fromEntries(met.map((each) => [each.address, each]));
/** Of two readings of one page the later one is the shop's word. */
const isOlder = (wanted: LabelMet, there: LabelMet) => wanted.readOn < there.readOn;

function record<V>(
  thing: 'photos' | 'readAs' | 'labelsMet',
  wanted: Record<string, V>,
  there: Record<string, V>,
  how: ImportHow,
  stays: (wanted: V, there: V) => boolean = () => false,
) {
  const tally = nothing(thing);
  const set: [string, V | null][] = [];
  for (const [key, value] of Object.entries(wanted)) {
    const was = there[key];
    if (same(was, value) || (how === 'merge' && was !== undefined && stays(value, was))) tally.same++;
    else {
      tally[key in there ? 'changed' : 'added']++;
      set.push([key, value]);
    }
  }
  if (how === 'replace')
    for (const key of Object.keys(there))
      if (!(key in wanted)) {
        tally.removed++;
        set.push([key, null]);
      }
  return { tally, set };
}

/** The file's products under the ids they have here, merged with what is known of them; references follow. */
function merged(file: Everything, there: There) {
  const here = new Map<string, string>();
  const byId = new Map(there.products.map((product) => [product.id, product]));
  const byName = Map.groupBy(there.products, nameWithoutMaker);
  const made = new Map<string, Product>();
  for (const product of file.products) {
    const same =
      byId.get(product.id) ??
      byName
        .get(nameWithoutMaker(product))
        ?.find((kept) => isSameProduct(kept, { facts: product, text: product.labels[0]?.text ?? '' }));
    if (same) here.set(product.id, same.id);
    const id = same?.id ?? product.id;
    // Two of the file may be one of here: what the first brought stays.
    const known = made.get(id) ?? same;
    made.set(id, known ? { ...mergeProducts(product, known), id } : product);
  }
  const follow = <S extends { product?: string }>(step: S): S => {
    const to = step.product && here.get(step.product);
    return to ? { ...step, product: to } : step;
  };
  return {
    products: [...made.values()],
    routines: file.routines.map((routine) => ({ ...routine, steps: routine.steps.map(follow) })),
    log: file.log.map((entry) => ({
      ...entry,
      done: { ...entry.done, steps: entry.done.steps.map(follow) },
    })),
    // Whose hair is in use and what is pinned stay as they are here; the file's own only fill gaps.
    settings: { ...file.settings, ...there.settings },
  };
}
