import type { Area } from './area.ts';
import { type Parsed, parsedKey, rememberedOf } from './contents.ts';
import { removedBy } from './keys.ts';
import type { Raw } from './migrations.ts';
import { keepingParts } from './parts.ts';
import type { Remembered } from './remembered.ts';

/**
 * What this context knows of the store, parsed once and kept up to date key by key, so that neither a page nor
 * a press waits for everything to be read again. Only where the area tells of changes; otherwise nothing is
 * kept and `remembered` is undefined. Writers never decide by this: they read the area in their turn.
 */
export function createParsedCache(area: Area, now: () => string) {
  let items: Map<string, Parsed> | undefined;
  /** Changes told while everything is being read; they are as new as what is read, or newer. */
  let meanwhile: Raw[] | undefined;
  let built: Remembered | undefined;
  let before: Remembered | undefined;

  let filling: Promise<Raw> | undefined;
  async function fill(read: () => Promise<Raw>) {
    meanwhile = [];
    const values = await read();
    if (!area.onChanged) return values;
    items = new Map();
    take(values);
    for (const later of meanwhile) take(later);
    return values;
  }

  function take(values: Raw) {
    built = undefined;
    for (const key of removedBy(values)) items?.delete(key);
    for (const [key, value] of Object.entries(values)) {
      const item = value === undefined ? undefined : parsedKey(key, value, now());
      if (item) items?.set(key, item);
      else items?.delete(key);
    }
  }
  area.onChanged?.addListener((changes) => {
    const values = Object.fromEntries(
      Object.entries(changes).map(([key, { newValue }]) => [key, newValue ?? undefined]),
    );
    if (meanwhile) meanwhile.push(values);
    else if (items) take(values);
  });

  return {
    remembered(): Remembered | undefined {
      if (!items) return undefined;
      // A write to one thing leaves all others the very ones they were: they need not be sent or weighed again.
      built ??= keepingParts(rememberedOf(items.values()), before);
      before = built;
      return built;
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
    wrote(values: Raw) {
      if (items) take(values);
    },
    forget() {
      items = undefined;
      built = undefined;
      before = undefined;
    },
  };
}
