import type { Acted } from '../../contract/messages.ts';
import type { Practice } from '../../core/judge/practice.ts';
import type { Keeper } from '../../store/keeper.ts';
import type { Remembered } from '../../store/remembered.ts';
import { createUndoStack, type Session } from '../../store/undo-stack.ts';
import type { Decided, Knowing } from '../knowing.ts';
import { type Act, decide } from './acts.ts';
import { endingWishes } from './matters/wishes.ts';

type Options = {
  keeper: Pick<Keeper, 'change'>;
  session: Session;
  practice: Practice;
  /** Labels read, by what is remembered; asked only while something is looked for. */
  reading: (remembered: Remembered) => Knowing['reading'];
  now?: () => string;
};

/**
 * Does what is asked: decides within the writer's turn, writes, and keeps what takes it back. The same act asked
 * twice (a worker was stopped before it answered) is done once and has one undo.
 */
export function createActing({
  keeper,
  session,
  practice,
  reading,
  now = () => new Date().toISOString(),
}: Options) {
  const undos = createUndoStack(session);

  return {
    async act(act: Act, id: string): Promise<Acted> {
      let decided: Decided = { changes: [] };
      let undo: string | undefined;
      const outcome = await keeper.change(
        (remembered) => {
          decided = endingWishes(
            { remembered, practice, reading: (text, as) => reading(remembered)(text, as) },
            decide(act, { remembered, practice, now: now() }),
          );
          return decided.changes;
        },
        // Before it is done: a worker stopped just after has kept what takes it back.
        async (changes) => {
          undo = await undos.push(changes, id);
        },
      );
      if (!outcome.ok) {
        if (undo) await undos.drop(undo);
        return outcome;
      }
      return {
        ok: true,
        ...(decided.say && { say: decided.say }),
        ...(undo && { undo }),
        ...(outcome.nearlyFull && { nearlyFull: true }),
      };
    },

    /** Takes one act back. What is gone already was taken back before. */
    async undo(key: string): Promise<Acted> {
      const undo = await undos.find(key);
      if (!undo) return { ok: true };
      const outcome = await keeper.change(undo.changes);
      if (!outcome.ok) return outcome;
      await undos.drop(undo.key);
      return { ok: true, say: { key: 'shell.undone' } };
    },
  };
}

export type Acting = ReturnType<typeof createActing>;
