import type { Change, Remembered } from '../../src/store/remembered.ts';
import type { Removed } from '../../src/ui/world.ts';

type Session = {
  get(key: string): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
  remove(key: string): Promise<void>;
};

export const undoKey = 'undo';
const most = 60;

/**
 * What takes the changes of this session back, newest last. Kept in storage.session, so that a panel that was
 * closed and opened again can still undo; gone with the browser. Where there is no room the oldest go first.
 */
export function createUndoStack(session: Session) {
  let stack: Change[][] = [];
  const loaded = session
    .get(undoKey)
    .then(({ [undoKey]: kept }) => {
      if (Array.isArray(kept)) stack = [...(kept as Change[][]), ...stack];
    })
    .catch(() => undefined);

  async function keep() {
    stack = stack.slice(-most);
    for (let from = 0; from <= stack.length; from = Math.max(from + 1, from * 2)) {
      try {
        await session.set({ [undoKey]: stack.slice(from) });
        return;
      } catch {
        // over the session's room: without the oldest
      }
    }
  }

  return {
    loaded,
    async push(changes: Change[]) {
      await loaded;
      stack.push(changes);
      await keep();
    },
    async pop(): Promise<Change[] | undefined> {
      await loaded;
      const last = stack.pop();
      await keep();
      return last;
    },
    async clear() {
      stack = [];
      await session.remove(undoKey);
    },
    /** Things that were removed and are not back, newest first. */
    removed: (remembered: Remembered): Removed[] => removedOf(stack, remembered),
  };
}

export function removedOf(stack: readonly Change[][], remembered: Remembered): Removed[] {
  const seen = new Set<string>();
  return stack.toReversed().flatMap((changes) =>
    changes.flatMap((change): Removed[] => {
      if (change.do !== 'put' || change.thing === 'sites') return [];
      const { thing, value } = change;
      const key = `${thing}:${value.id}`;
      if (seen.has(key) || remembered[thing].some(({ id }) => id === value.id)) return [];
      seen.add(key);
      return [{ thing, value } as Removed];
    }),
  );
}
