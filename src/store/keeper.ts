import { browser } from 'wxt/browser';
import * as z from 'zod/mini';
import { applied, changeKey, inverse, valueBefore } from './apply-change.ts';
import { type Area, bytesOf, type Locks, oneAtATime } from './area.ts';
import {
  type Everything,
  everythingOf,
  everythingOfCopy,
  orphanPhotos,
  storedKeysOf,
} from './files/everything.ts';
import { createParsedCache } from './parsed-cache.ts';
import { photosApart } from './photos-apart.ts';
import type { Change, Outcome, Reject, Remembered } from './remembered.ts';
import { contentsOf, parsed } from './schema/contents.ts';
import {
  asideKey,
  isApart,
  journalKey,
  keyParts,
  photoKey,
  removedBy,
  snapshotKey,
  versionKey,
  writtenKey,
} from './schema/keys.ts';
import { currentVersion, migrate, type Raw } from './schema/migrations.ts';
import * as schemas from './schema/schemas.ts';

/** How the store stands. */
export type StoreState = {
  version: number;
  /** Written by a newer Strandline, or there was no room to bring it up to date: read and export only. */
  readOnly: false | 'newer' | 'no-room';
  /** Values that do not parse, where they stand or set aside. */
  rejects: Reject[];
  bytes: number;
  quota: number;
  nearlyFull: boolean;
};

export type Keeper = ReturnType<typeof createKeeper>;

type Options = { locks?: Locks | undefined; now?: () => string };

const defaultQuota = 10 * 1024 * 1024; // storage.local without `unlimitedStorage`, Chromium 114 and later
const nearlyFullFrom = 0.85;
const versionSchema = z.object({ version: z.int().check(z.positive()) });

/**
 * Keeps everything that is remembered in one storage area. Every read is parsed; every write is one `set`, all
 * or none, and waits its turn behind every other window and the worker (navigator.locks). Methods never throw
 * for bad values or a full store: they say so in what they return.
 */
export function createKeeper(
  area: Area = photosApart(browser.storage.local as unknown as Area),
  {
    locks = globalThis.navigator?.locks as Locks | undefined,
    now = () => new Date().toISOString(),
  }: Options = {},
) {
  const turn = oneAtATime(locks, 'strandline-store');
  const quota = area.QUOTA_BYTES ?? defaultQuota;

  const bytes = async () => (area.getBytesInUse ? area.getBytesInUse(null) : bytesOf(await area.get(null)));

  /** Everything but photos, copies and rejects, with a change half done by a killed worker taken as done. */
  async function stored(): Promise<Raw> {
    if (!area.getKeys) return afterJournal(await area.get(null));
    // Asked first: a write that comes between is told of later, and must not pass for read.
    const { [writtenKey]: written } = await area.get([writtenKey]);
    const keys = (await area.getKeys()).filter((key) => !isApart(key));
    return { ...afterJournal(await area.get(keys)), [writtenKey]: written };
  }

  /** What stands there, for a change to be decided by; only within a turn. Read again only where others wrote. */
  async function standing(): Promise<Remembered> {
    const { [writtenKey]: written } = await area.get([writtenKey]);
    const known = cache.at(written);
    if (known) return known;
    const values = await stored();
    return cache.taken(values) ?? contentsOf(values, now()).remembered;
  }

  let current = false;

  /** Version of what is stored; brings an older store up to date first. Only within a turn. */
  async function ready(): Promise<{ version: number; readOnly: StoreState['readOnly'] }> {
    if (current) return { version: currentVersion, readOnly: false };
    const { [versionKey]: mark, strandline: first } = await area.get([versionKey, 'strandline']);
    const marked = versionSchema.safeParse(mark);
    const version = marked.success ? marked.data.version : first ? 1 : currentVersion;
    if (version > currentVersion) return { version, readOnly: 'newer' };
    current = version === currentVersion || (await bringUpToDate(version));
    return current ? { version: currentVersion, readOnly: false } : { version, readOnly: 'no-room' };
  }

  /** The copy of what was there and what it becomes are one `set`: a worker killed between loses neither. */
  async function bringUpToDate(version: number): Promise<boolean> {
    const before = await stored();
    const when = now();
    const set: Raw = {
      [snapshotKey('migration')]: { version, when, values: before },
      [versionKey]: { version: currentVersion },
      [writtenKey]: crypto.randomUUID(),
      [journalKey]: { remove: ['strandline'] },
    };
    const document = migrate((before.strandline ?? {}) as Raw, version, (key, value, why) => {
      set[asideKey(key, when)] = { key, value, why, when };
    });
    Object.assign(set, storedKeysOf(document, when));
    try {
      await area.set(set);
      await area.remove(['strandline', journalKey]);
      return true;
    } catch {
      return false;
    }
  }

  const cache = createParsedCache(area, now);

  /** Everything, parsed. The same object until something changes. */
  async function remembered(): Promise<Remembered> {
    const ready = cache.remembered();
    if (ready) return ready;
    const values = await cache.fill(turnIfOld);
    return cache.remembered() ?? contentsOf(values, now()).remembered;
  }

  // A read waits for its turn only when the store has to be brought up to date first.
  async function turnIfOld(): Promise<Raw> {
    const values = await stored();
    if (!('strandline' in values) || versionKey in values) return values;
    return turn(async () => {
      const { readOnly, version } = await ready();
      const values = await stored();
      if (readOnly !== 'no-room') return values;
      return storedKeysOf(
        migrate((values.strandline ?? {}) as Raw, version, () => undefined),
        now(),
      );
    });
  }

  /**
   * Applies all changes or none; see `Outcome`. Changes that depend on what is remembered are decided within
   * the turn, by what stands there then.
   */
  function change(
    changes: Change[] | ((remembered: Remembered) => Change[]),
    /** Hears what takes them back, before they are written. */
    before?: (undo: Change[]) => Promise<void>,
  ): Promise<Outcome> {
    return turn(async (): Promise<Outcome> => {
      const { readOnly } = await ready();
      if (readOnly) return { ok: false, reason: `keeping.${readOnly}` };
      const decided = typeof changes === 'function' ? changes(await standing()) : changes;
      const asked = parsed(z.array(schemas.change), decided);
      if (!asked.ok) return { ok: false, reason: 'keeping.unfit' };
      const wanted = asked.value as Change[];
      const keyed = wanted.filter((one) => one.do !== 'snapshot');
      const keys = [...new Set(keyed.map(changeKey))];
      const there = await area.get([...keys, journalKey, writtenKey]);
      await finishJournal(there);
      const when = now();
      const write: Raw = {};
      const undo: Change[] = [];
      const after: Raw = Object.fromEntries(keys.map((key) => [key, valueBefore(key, there[key])]));
      for (const key of keys)
        if (there[key] !== undefined && after[key] === undefined)
          write[asideKey(key, when)] = { key, value: there[key], why: 'did not parse', when };
      for (const one of keyed) {
        const key = changeKey(one);
        const was = after[key];
        after[key] = applied(one, was);
        undo.unshift(inverse(one, was, after[key]));
      }
      if (keyed.length < wanted.length)
        write[snapshotKey('import')] = { version: currentVersion, when, values: await stored() };
      const gone = keys.filter((key) => after[key] === undefined && there[key] !== undefined);
      for (const key of keys) if (after[key] !== undefined) write[key] = after[key];
      if (undo.length > 0) await before?.(undo);
      const isTold = [...Object.keys(write), ...gone].some((key) => !isApart(key));
      const written = isTold ? crypto.randomUUID() : there[writtenKey];
      const mark: Raw = isTold ? { [writtenKey]: written } : {};
      const writes = Object.keys(write).length > 0;
      try {
        if (writes) {
          if (gone.length > 0) write[journalKey] = { remove: gone };
          await area.set({ ...write, ...mark, [versionKey]: { version: currentVersion } });
        } else if (gone.length > 0) await area.remove([...gone, ...Object.keys(mark)]); // needs no room
      } catch (problem) {
        // A browser may write and still complain: what stands decides.
        if (!(await stand(writes ? { ...write, ...mark } : {}, gone).catch(() => false)))
          return { ok: false, reason: isFull(problem) ? 'keeping.full' : 'keeping.refused' };
      }
      // The values stand: should this fail, readers honour the journal and the next writer ends it.
      if (write[journalKey]) await succeeds(area.remove([...gone, journalKey]));
      // Without a word of its own the next to decide reads everything again.
      const isMarked = writes || !isTold || (await succeeds(area.set(mark)));
      const news = { ...write, ...Object.fromEntries(gone.map((key) => [key, undefined])) };
      cache.wrote(news, there[writtenKey], isMarked ? written : undefined);
      const nearlyFull = (await bytes()) >= quota * nearlyFullFrom;
      return { ok: true, undo, ...(nearlyFull && { nearlyFull }) };
    });
  }

  /** Whether values stand as they were to be written. */
  async function stand(written: Raw, gone: readonly string[]): Promise<boolean> {
    const keys = Object.keys(written).filter((key) => key !== journalKey);
    if (keys.length === 0) return Object.keys(await area.get([...gone])).length === 0;
    const there = await area.get(keys);
    return keys.every((key) => JSON.stringify(there[key]) === JSON.stringify(written[key]));
  }

  async function finishJournal(before: Raw) {
    if (!(journalKey in before)) return;
    const gone = removedBy(before);
    await area.remove([...gone, journalKey]);
    for (const key of gone) delete before[key];
  }

  /** A photo's data URL. */
  async function photo(key: string): Promise<string | undefined> {
    const { [photoKey(key)]: data } = await area.get([photoKey(key)]);
    const picture = schemas.photo.safeParse(data);
    return picture.success ? picture.data : undefined;
  }

  async function state(): Promise<StoreState> {
    const { version, readOnly } = await turn(ready);
    const { rejects } = contentsOf(await stored(), now());
    const all = area.getKeys ? await area.getKeys() : Object.keys(await area.get(null));
    const aside = await area.get(all.filter((key) => keyParts(key)[0] === 'aside'));
    const used = await bytes();
    return {
      version,
      readOnly,
      rejects: [...rejects, ...(Object.values(aside) as Reject[])],
      bytes: used,
      quota,
      nearlyFull: used >= quota * nearlyFullFrom,
    };
  }

  /** Everything as the export file holds it; photos and values set aside as well. */
  async function everything(): Promise<Everything> {
    const { version } = await turn(ready);
    return everythingOf(afterJournal(await area.get(null)), version, now());
  }

  /** The copy made before the last update or import, in the form of the export file. */
  async function copy(why: 'migration' | 'import'): Promise<Raw | undefined> {
    return everythingOfCopy((await area.get([snapshotKey(why)]))[snapshotKey(why)]);
  }

  /** Removes photos whose log entry is gone; at the start of a session, when nothing can be undone any more. */
  const sweep = () =>
    turn(async () => {
      const orphans = orphanPhotos(await area.get(null));
      if (orphans.length > 0) await area.remove(orphans);
    });

  /** Removes every key of the store. */
  const forget = () =>
    turn(async () => {
      await area.clear();
      cache.forget();
    });

  return { remembered, change, photo, state, everything, copy, sweep, forget };
}

const succeeds = (doing: Promise<unknown>) =>
  doing.then(
    () => true,
    () => false,
  );

/** Browsers say in words that there is no room. */
const isFull = (problem: unknown) => /quota/i.test(String(problem));

function afterJournal(values: Raw): Raw {
  for (const key of [...removedBy(values), journalKey]) delete values[key];
  return values;
}
