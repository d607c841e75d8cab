import type { Change, Remembered, ThingOf } from './remembered.ts';

/** The part of `browser.storage.session` that is used here; tests hand in their own. */
export type Session = {
  get(key: string | null): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
  remove(keys: string[]): Promise<void>;
};

/** A thing that was removed and can be put back, with its pictures. */
export type Removed = {
  [T in 'heads' | 'products' | 'routines' | 'log']: { thing: T; value: ThingOf[T]; pictures: Change[] };
}['heads' | 'products' | 'routines' | 'log'];

/** What takes one act back. */
export type Undo = { key: string; changes: Change[] };

const prefix = 'undo:';
export const isUndoKey = (key: string) => key.startsWith(prefix);
const most = 60;
const order = (key: string) => Number(key.slice(prefix.length).split(':')[0]);

/** What takes the acts of this session back, oldest first. */
export const undosIn = (session: Record<string, unknown>): Undo[] =>
  Object.entries(session)
    .filter((entry): entry is [string, Change[]] => isUndoKey(entry[0]) && Array.isArray(entry[1]))
    .map(([key, changes]) => ({ key, changes }))
    .toSorted((a, b) => order(a.key) - order(b.key));

/**
 * Undos lie in storage.session, each under a key of its own, so that a worker that slept and a panel opened later
 * know them; gone with the browser. Where there is no room the oldest go first.
 */
export function createUndoStack(session: Session, now: () => number = Date.now) {
  const all = async () => undosIn(await session.get(null));

  return {
    /** `id` is the act's own: asked twice, the first undo stays. Its key, or undefined where there is no room. */
    async push(changes: Change[], id: string): Promise<string | undefined> {
      const stack = await all();
      const known = stack.find(({ key }) => key.endsWith(`:${id}`));
      if (known) return known.key;
      // A clock that was set back must not bring an older undo to the top.
      const nth = Math.max(now(), order(stack.at(-1)?.key ?? `${prefix}0`) + 1);
      const key = `${prefix}${nth}:${id}`;
      const old = stack.splice(0, Math.max(0, stack.length + 1 - most));
      if (old.length > 0) await session.remove(old.map((each) => each.key));
      for (;;) {
        try {
          await session.set({ [key]: changes });
          return key;
        } catch {
          const oldest = stack.shift();
          if (!oldest) return undefined;
          await session.remove([oldest.key]);
        }
      }
    },
    async find(key: string): Promise<Undo | undefined> {
      return (await all()).find((each) => each.key === key);
    },
    drop: (key: string) => session.remove([key]),
  };
}

/** Things that were removed and are not back, newest first. */
export function removedOf(stack: readonly Undo[], remembered: Remembered): Removed[] {
  const seen = new Set<string>();
  return stack.toReversed().flatMap(({ changes }) => {
    const photos = changes.filter((change) => change.do === 'photo' && change.data !== null);
    return changes.flatMap((change): Removed[] => {
      if (change.do !== 'put' || change.thing === 'sites') return [];
      const { thing, value } = change;
      const key = `${thing}:${value.id}`;
      if (seen.has(key) || remembered[thing].some(({ id }) => id === value.id)) return [];
      seen.add(key);
      const own = 'photo' in value ? value.photo : 'picture' in value ? value.picture : undefined;
      const pictures = photos.filter((photo) => photo.do === 'photo' && photo.key === own);
      return [{ thing, value, pictures } as Removed];
    });
  });
}
