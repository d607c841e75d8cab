import { type Thing, things } from '../remembered.ts';

/** One key for each thing kept, so that two writers seldom meet and one broken value spoils nothing else. */
export const versionKey = 'store';
export const settingsKey = 'settings';
/** Keys still to be removed by a change whose values are already written. */
export const journalKey = 'journal';

/** Which write was the last: a word of its own for each. */
export const writtenKey = 'written';

export const thingKey = (thing: Thing, id: string) => `${thing}:${id}`;
export const readAsKey = (printed: string) => `read-as:${printed}`;
export const photoKey = (photo: string) => `photo:${photo}`;
/** A label met while browsing, by its product's address. */
export const shelfKey = (address: string) => `shelf:${address}`;
export const asideKey = (key: string, when: string) => `aside:${key}:${when}`;
export const snapshotKey = (why: 'migration' | 'import') => `snapshot:${why}`;

/** What a key holds: its kind, and the rest of the key. */
export function keyParts(key: string): [kind: string, id: string] {
  const at = key.indexOf(':');
  return at < 0 ? [key, ''] : [key.slice(0, at), key.slice(at + 1)];
}

export const isThing = (kind: string): kind is Thing => (things as readonly string[]).includes(kind);

/** Read when asked for, never with the rest: photos are large, copies and rejects are seldom wanted. */
const apart = new Set(['photo', 'snapshot', 'aside', 'shelf']);
export const isApart = (key: string) => apart.has(keyParts(key)[0]);

/** Keys that a change half done (its values written, its removals not yet) takes away. */
export function removedBy({ [journalKey]: journal }: Record<string, unknown>): string[] {
  const { remove } = (journal ?? {}) as { remove?: unknown };
  return Array.isArray(remove) ? remove.filter((key) => typeof key === 'string') : [];
}
