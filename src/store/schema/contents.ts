import type * as z from 'zod/mini';
import type { ReadAs } from '../../core/reading/reading.ts';
import {
  nothingRemembered,
  type Reject,
  type Remembered,
  type Settings,
  type Thing,
  type ThingOf,
} from '../remembered.ts';
import { isApart, isThing, keyParts, settingsKey, thingKey } from './keys.ts';
import { labelMet, readAs as readAsSchema, schemaOf, settings as settingsSchema } from './schemas.ts';

/** Parses one value; says why not in the words of the schema (path and expectation), for the file of rejects. */
export function parsed<T>(
  schema: z.ZodMiniType<T>,
  value: unknown,
): { ok: true; value: T } | { ok: false; why: string } {
  const result = schema.safeParse(value);
  if (result.success) return { ok: true, value: result.data };
  const issue = result.error.issues[0]!;
  const expected = 'expected' in issue ? ` ${issue.expected}` : '';
  return { ok: false, why: [issue.path.join('.'), issue.code + expected].filter(Boolean).join(': ') };
}

/** What identifies a thing within its kind. */
export const idOf = <T extends Thing>(thing: T, value: ThingOf[T]): string =>
  thing === 'sites' ? (value as ThingOf['sites']).origin : (value as ThingOf['heads']).id;

/** The schema of one key's value, or undefined for keys that are none of ours. */
export function schemaForKey(key: string): z.ZodMiniType | undefined {
  const [kind, id] = keyParts(key);
  if (key === settingsKey) return settingsSchema;
  if (kind === 'shelf') return labelMet;
  return isThing(kind) && id ? schemaOf[kind] : undefined;
}

/** One stored value, parsed: what it is, or why it is none. Undefined for keys that are none of ours. */
export type Parsed =
  | { is: Thing; value: ThingOf[Thing] }
  | { is: 'readAs'; printed: string; name: ReadAs[string] }
  | { is: 'settings'; value: Settings }
  | { is: 'reject'; reject: Reject };

export function parsedKey(key: string, value: unknown, now: string): Parsed | undefined {
  if (isApart(key)) return undefined;
  const reject = (why: string): Parsed => ({ is: 'reject', reject: { key, value, why, when: now } });
  const [kind, id] = keyParts(key);
  if (kind === 'read-as' && id) {
    const name = parsed(readAsSchema, value);
    return name.ok ? { is: 'readAs', printed: id, name: name.value } : reject('a name');
  }
  const schema = schemaForKey(key);
  if (!schema) return undefined;
  const result = parsed(schema, value);
  if (!result.ok) return reject(result.why);
  if (key === settingsKey) return { is: 'settings', value: result.value as Settings };
  if (!isThing(kind)) return undefined;
  const item = result.value as ThingOf[Thing];
  return thingKey(kind, idOf(kind, item as never)) === key
    ? { is: kind, value: item }
    : reject('id: not its key');
}

/** Parsed values → what is remembered, in its one order. */
export function rememberedOf(items: Iterable<Parsed>): Remembered {
  const remembered = nothingRemembered();
  const readAs = new Map<string, ReadAs[string]>(); // a name may be printed `__proto__`
  for (const item of items) {
    if (item.is === 'readAs') readAs.set(item.printed, item.name);
    else if (item.is === 'settings') remembered.settings = item.value;
    else if (item.is !== 'reject') (remembered[item.is] as unknown[]).push(item.value);
  }
  return inOrder({ ...remembered, readAs: Object.fromEntries(readAs) });
}

/** Stored keys and values → what is remembered, every value parsed; what does not parse is left and told. */
export function contentsOf(stored: Record<string, unknown>, now: string) {
  const items = Object.entries(stored).flatMap(([key, value]) => parsedKey(key, value, now) ?? []);
  const rejects = items.flatMap((item) => (item.is === 'reject' ? [item.reject] : []));
  return { remembered: rememberedOf(items), rejects };
}

const by =
  <T>(...keys: ((item: T) => string)[]) =>
  (a: T, b: T) => {
    for (const key of keys) if (key(a) !== key(b)) return key(a) < key(b) ? -1 : 1;
    return 0;
  };

/** The one order of everything remembered: as added; the log by date. Keys come back from a browser in any. */
export function inOrder(remembered: Remembered): Remembered {
  const added = by<{ added: string; id: string }>(
    ({ added: when }) => when,
    ({ id }) => id,
  );
  return {
    heads: remembered.heads.toSorted(added),
    products: remembered.products.toSorted(added),
    routines: remembered.routines.toSorted(added),
    log: remembered.log.toSorted(
      by(
        ({ date }) => date,
        ({ id }) => id,
      ),
    ),
    sites: remembered.sites.toSorted(by(({ origin }) => origin)),
    readAs: Object.fromEntries(Object.entries(remembered.readAs).toSorted(by(([printed]) => printed))),
    settings: remembered.settings,
  };
}
