import type * as z from 'zod/mini';
import { isApart, isThing, keyParts, settingsKey, thingKey } from './keys.ts';
import { defaultSettings, type Reject, type Remembered, type Thing, type ThingOf } from './remembered.ts';
import { schemaOf, settings as settingsSchema } from './schemas.ts';

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
  return isThing(kind) && id ? schemaOf[kind] : undefined;
}

/** Stored keys and values → what is remembered, every value parsed; what does not parse is left and told. */
export function contentsOf(
  stored: Record<string, unknown>,
  now: string,
): { remembered: Remembered; rejects: Reject[] } {
  const remembered: Remembered = {
    heads: [],
    products: [],
    routines: [],
    log: [],
    sites: [],
    readAs: {},
    settings: defaultSettings,
  };
  const rejects: Reject[] = [];
  const reject = (key: string, value: unknown, why: string) => rejects.push({ key, value, why, when: now });
  for (const [key, value] of Object.entries(stored)) {
    if (isApart(key)) continue;
    const [kind, id] = keyParts(key);
    if (kind === 'read-as' && id) {
      if (typeof value === 'string') remembered.readAs[id] = value;
      else reject(key, value, 'a name');
      continue;
    }
    const schema = schemaForKey(key);
    if (!schema) continue;
    const result = parsed(schema, value);
    if (!result.ok) reject(key, value, result.why);
    else if (key === settingsKey) remembered.settings = result.value as Remembered['settings'];
    else if (!isThing(kind)) continue;
    else if (thingKey(kind, idOf(kind, result.value as never)) !== key) reject(key, value, 'id: not its key');
    else (remembered[kind] as unknown[]).push(result.value);
  }
  return { remembered: inOrder(remembered), rejects };
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
