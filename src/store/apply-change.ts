import { type Change, defaultSettings, type LabelMet } from './remembered.ts';
import { idOf, parsed, schemaForKey } from './schema/contents.ts';
import { photoKey, readAsKey, settingsKey, shelfKey, thingKey } from './schema/keys.ts';
import type { Raw } from './schema/migrations.ts';
import { threeWay } from './three-way.ts';

/** Changes that touch one key; a snapshot touches none. */
export type Keyed = Exclude<Change, { do: 'snapshot' }>;

/** The key a change touches. */
export function changeKey(change: Keyed): string {
  switch (change.do) {
    case 'put':
      return thingKey(change.thing, idOf(change.thing, change.value));
    case 'remove':
      return thingKey(change.thing, change.id);
    case 'set':
      return settingsKey;
    case 'read-as':
      return readAsKey(change.printed);
    case 'photo':
      return photoKey(change.key);
    case 'label-met':
      return shelfKey(change.address);
  }
}

/** What stands under a key, parsed; undefined where there is nothing or it does not parse. */
export function valueBefore(key: string, value: unknown): unknown {
  const schema = schemaForKey(key);
  if (schema) {
    const result = parsed(schema, value);
    return result.ok ? result.value : undefined;
  }
  return typeof value === 'string' ? value : undefined;
}

/** What stands under the key after the change; undefined when it is removed. */
export function applied(change: Keyed, before: unknown): unknown {
  switch (change.do) {
    case 'put':
      return change.was === undefined || before === undefined
        ? change.value
        : threeWay(change.was, change.value, before);
    case 'remove':
      return undefined;
    case 'set': {
      const settings: Raw = { ...defaultSettings, ...(before as Raw | undefined), ...change.settings };
      for (const key of change.unset ?? []) if (!(key in defaultSettings)) delete settings[key];
      return settings;
    }
    case 'read-as':
      return change.name ?? undefined;
    case 'photo':
      return change.data ?? undefined;
    case 'label-met':
      return change.entry ?? undefined;
  }
}

/** The change that brings back what stood there; `after` is what stands there since. */
export function inverse(change: Keyed, before: unknown, after: unknown): Change {
  switch (change.do) {
    case 'put':
    case 'remove': {
      const was = after === undefined ? {} : { was: after };
      if (before !== undefined) return { do: 'put', thing: change.thing, value: before, ...was } as Change;
      const id = change.do === 'put' ? idOf(change.thing, change.value) : change.id;
      return { do: 'remove', thing: change.thing, id };
    }
    case 'set': {
      const settings = { ...defaultSettings, ...(before as Raw | undefined) } as Raw;
      const touched = [...Object.keys(change.settings), ...(change.unset ?? [])];
      return {
        do: 'set',
        settings: Object.fromEntries(
          touched.filter((key) => key in settings).map((key) => [key, settings[key]]),
        ),
        unset: touched.filter((key) => !(key in settings)),
      };
    }
    case 'read-as':
      return { do: 'read-as', printed: change.printed, name: (before as string | undefined) ?? null };
    case 'photo':
      return { do: 'photo', key: change.key, data: (before as string | undefined) ?? null };
    case 'label-met':
      return { do: 'label-met', address: change.address, entry: (before as LabelMet | undefined) ?? null };
  }
}
