import * as z from 'zod/mini';
import { type LabelMet, type Reject, type Remembered, things } from '../remembered.ts';
import { contentsOf, idOf, parsed } from '../schema/contents.ts';
import { asideKey, keyParts, photoKey, readAsKey, settingsKey, thingKey } from '../schema/keys.ts';
import { currentVersion, type Raw } from '../schema/migrations.ts';
import * as schemas from '../schema/schemas.ts';

/** Everything kept, as one file. Older versions are brought up to date when they are read. */
export type Everything = Remembered & {
  strandline: 'everything';
  version: number;
  /** ISO date-time of the export. */
  made: string;
  /** Data URLs by key; log entries name theirs. */
  photos: Record<string, string>;
  /** Labels met while browsing; they mark shelves. */
  labelsMet: LabelMet[];
  /** Stored values that did not parse, as they were: carried along, never read. */
  aside: Reject[];
};

const reject = z.object({ key: z.string(), value: z.unknown(), why: z.string(), when: z.string() });

/** The file of the current version; `src/store/files/everything.schema.json` is made from this. */
export const everythingSchema = z.object({
  strandline: z.literal('everything'),
  version: z.literal(currentVersion),
  made: z.string(),
  heads: z.array(schemas.schemaOf.heads),
  products: z.array(schemas.schemaOf.products),
  routines: z.array(schemas.schemaOf.routines),
  log: z.array(schemas.schemaOf.log),
  sites: z.array(schemas.schemaOf.sites),
  readAs: z.record(z.string(), schemas.readAs),
  settings: schemas.settings,
  photos: z.record(z.string(), schemas.photo),
  labelsMet: z.array(schemas.labelMet),
  aside: z.array(reject),
});

/** Keys and values of a store → the file. Values that do not parse go along under `aside`. */
export function everythingOf(stored: Raw, version: number, made: string): Everything {
  const { remembered, rejects } = contentsOf(stored, made);
  // A newer Strandline may keep more of a thing than is known here: it leaves as it was stored.
  if (version > currentVersion)
    for (const thing of things)
      (remembered as Raw)[thing] = remembered[thing].map(
        (item) => stored[thingKey(thing, idOf(thing, item))],
      );
  const photos: Record<string, string> = {};
  const labelsMet: LabelMet[] = [];
  const aside = [...rejects];
  for (const [key, value] of Object.entries(stored)) {
    const [kind, id] = keyParts(key);
    if (kind === 'photo') {
      const picture = parsed(schemas.photo, value);
      if (picture.ok) photos[id] = picture.value;
      else aside.push({ key, value, why: picture.why, when: made });
    }
    if (kind === 'shelf') {
      // One that does not parse is met again some day, or not.
      const met = parsed(schemas.labelMet, value);
      if (met.ok && met.value.address === id) labelsMet.push(met.value as LabelMet);
    }
    if (kind === 'aside') {
      const kept = parsed(reject, value);
      if (kept.ok) aside.push(kept.value as Reject);
    }
  }
  return { strandline: 'everything', version, made, ...remembered, photos, labelsMet, aside };
}

/** The copy kept before an import or an update, as a file that can be read again. */
export function everythingOfCopy(copy: unknown): Raw | undefined {
  const kept = parsed(
    z.object({ version: z.int(), when: z.string(), values: z.record(z.string(), z.unknown()) }),
    copy,
  );
  if (!kept.ok) return undefined;
  const { version, when, values } = kept.value;
  if (version === 1)
    return { ...(values.strandline as Raw | undefined), strandline: 'everything', version, made: when };
  return { ...everythingOf(values, version, when) };
}

/** Photos no log entry (nor any value set aside) speaks of: left behind by entries that were removed. */
export function orphanPhotos(stored: Raw): string[] {
  const spoken = JSON.stringify(Object.entries(stored).filter(([key]) => keyParts(key)[0] !== 'photo'));
  return Object.keys(stored).filter((key) => {
    const [kind, id] = keyParts(key);
    return kind === 'photo' && !spoken.includes(JSON.stringify(id));
  });
}

/** Document form → keys. Items without a usable id are set aside rather than dropped. */
export function storedKeysOf(document: Raw, when: string): Raw {
  const set: Raw = {};
  for (const thing of ['heads', 'products', 'routines', 'log', 'sites'] as const)
    for (const [i, item] of ((document[thing] as unknown[] | undefined) ?? []).entries()) {
      const id = (item as Raw)?.[thing === 'sites' ? 'origin' : 'id'];
      const key = `${thing}:${i}`;
      if (typeof id === 'string' && id) set[thingKey(thing, id)] = item;
      else set[asideKey(key, when)] = { key, value: item, why: 'no id', when };
    }
  for (const [printed, name] of Object.entries((document.readAs as Raw | undefined) ?? {}))
    set[readAsKey(printed)] = name;
  for (const [key, data] of Object.entries((document.photos as Raw | undefined) ?? {}))
    set[photoKey(key)] = data;
  if (document.settings) set[settingsKey] = document.settings;
  return set;
}
