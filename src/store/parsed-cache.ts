import type { Area } from './area.ts';
import { keepingParts } from './parts.ts';
import type { Remembered } from './remembered.ts';
import { type Parsed, parsedKey, rememberedOf } from './schema/contents.ts';
import { removedBy, writtenKey } from './schema/keys.ts';
import type { Raw } from './schema/migrations.ts';

/**
 * What this context knows of the store, parsed once and kept up to date key by key, so that neither a page nor
 * a press waits for everything to be read again. Only where the area tells of changes; otherwise nothing is
 * kept and `remembered` is undefined. Each write leaves a word of its own: a writer in its turn decides by what is
 * known here only where the last word known is the one that stands there.
 */
export function createParsedCache(area: Area, now: () => string) {
  let items: Map<string, Parsed> | undefined;
  /** The write up to which `items` have all; undefined: not known. */
  let upTo: unknown;
  /** Own writes that we have not been told of yet, while nobody else was heard: they tell nothing new. */
  const own = new Set<unknown>();
  /** Changes told while everything is being read; they are as new as what is read, or newer. */
  let meanwhile: Raw[] | undefined;
  let taken = false;
  let built: Remembered | undefined;
  let before: Remembered | undefined;

  let filling: Promise<Raw> | undefined;
  async function fill(read: () => Promise<Raw>) {
    meanwhile = [];
    taken = false;
    const values = await read();
    if (!area.onChanged) return values;
    if (!taken) anew(values); // a writer may have read it, in its turn, before
    const told = meanwhile;
    meanwhile = undefined; // in the same turn: what is told from now on is heard at once
    told.forEach(hear);
    return values;
  }

  function anew(values: Raw) {
    items = new Map();
    built = undefined;
    take(values);
    upTo = values[writtenKey];
    own.clear();
  }

  /** Whether anything is another since. */
  function take(values: Raw): boolean {
    let isOther = false;
    const drop = (key: string) => {
      if (items?.delete(key)) isOther = true;
    };
    removedBy(values).forEach(drop);
    for (const [key, value] of Object.entries(values)) {
      const item = value === undefined ? undefined : parsedKey(key, value, now());
      if (!item) drop(key);
      else if (items?.set(key, item)) isOther = true;
    }
    if (isOther) built = undefined;
    return isOther;
  }

  /** Events come in the order of the writes, but after own writes were taken: an older one takes values back. */
  function hear(values: Raw) {
    const { [writtenKey]: written } = values;
    if (own.delete(written) || isKnown(written)) return;
    const isOther = take(values);
    if (!isOther && !(writtenKey in values)) return;
    upTo = written;
    own.clear();
  }
  area.onChanged?.addListener((changes) => {
    const values = Object.fromEntries(
      Object.entries(changes).map(([key, { newValue }]) => [key, newValue ?? undefined]),
    );
    if (meanwhile) meanwhile.push(values);
    else if (items) hear(values);
  });

  const isKnown = (written: unknown) => written !== undefined && written === upTo;

  function remembered(): Remembered | undefined {
    if (!items) return undefined;
    // A write to one thing leaves all others the very ones they were: they need not be sent or weighed again.
    built ??= keepingParts(rememberedOf(items.values()), before);
    before = built;
    return built;
  }

  return {
    remembered,
    /** The same, where it is known up to this write. */
    at: (written: unknown) => (isKnown(written) ? remembered() : undefined),
    /** What was read of everything within a turn. */
    taken(values: Raw): Remembered | undefined {
      if (!area.onChanged) return undefined;
      anew(values);
      taken = true;
      return remembered();
    },
    /** Reads everything, once for all who ask meanwhile; `read` gives keys and values. */
    fill(read: () => Promise<Raw>): Promise<Raw> {
      filling ??= fill(read).finally(() => {
        filling = undefined;
        meanwhile = undefined;
      });
      return filling;
    },
    /** Own writes are known at once; an `undefined` value was removed. */
    wrote(values: Raw, from: unknown, to: unknown) {
      if (!items || isKnown(to)) return; // told already
      take(values);
      upTo = isKnown(from) ? to : undefined;
      if (isKnown(to)) own.add(to);
    },
    forget() {
      items = undefined;
      upTo = undefined;
      own.clear();
      built = undefined;
      before = undefined;
    },
  };
}
