import type { Change, Remembered } from '../../src/store/remembered.ts';
import type { Removed } from '../../src/ui/world.ts';

type Session = {
  get(key: string | null): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
  remove(keys: string[]): Promise<void>;
};

const prefix = 'undo:';
export const isUndoKey = (key: string) => key.startsWith(prefix);
const most = 60;

/**
 * What takes the changes of this session back, newest last. Each lies under a key of its own in storage.session,
 * so that a panel that was closed and opened again can still undo; gone with the browser. Where there is no room
 * the oldest go first.
 */
export function createUndoStack(session: Session, now: () => number = Date.now) {
  let stack: { key: string; changes: Change[] }[] = [];
  let nth = 0;
  const loaded = session
    .get(null)
    .then((kept) => {
      const before = Object.entries(kept)
        .filter(([key, changes]) => isUndoKey(key) && Array.isArray(changes))
        .toSorted(([a], [b]) => (a < b ? -1 : 1));
      stack = [...before.map(([key, changes]) => ({ key, changes: changes as Change[] })), ...stack];
    })
    .catch(() => undefined);

  async function keep(key: string, changes: Change[]) {
    for (;;) {
      try {
        await session.set({ [key]: changes });
        return;
      } catch {
        // Over the session's room: the oldest goes; the newest is still known to this panel if nothing is left.
        if (stack.length < 2) return;
        await session.remove([stack.shift()!.key]);
      }
    }
  }

  return {
    loaded,
    async push(changes: Change[]) {
      await loaded;
      const key = `${prefix}${String(now()).padStart(15, '0')}:${String(nth++).padStart(6, '0')}`;
      stack.push({ key, changes });
      await keep(key, changes);
      const old = stack.splice(0, Math.max(0, stack.length - most));
      if (old.length > 0) await session.remove(old.map((each) => each.key));
    },
    async pop(): Promise<Change[] | undefined> {
      await loaded;
      const last = stack.pop();
      if (last) await session.remove([last.key]);
      return last?.changes;
    },
    async clear() {
      const keys = stack.map(({ key }) => key);
      stack = [];
      await session.remove(keys);
    },
    /** Things that were removed and are not back, newest first. */
    removed: (remembered: Remembered): Removed[] =>
      removedOf(
        stack.map(({ changes }) => changes),
        remembered,
      ),
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
