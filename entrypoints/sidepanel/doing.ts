import type { Acted } from '../../src/contract/messages.ts';
import { cameOf } from '../../src/ui/describe/came-of.ts';
import type { Act } from '../../src/use/acts/acts.ts';
import { carrying } from '../../src/use/acts/carry.ts';
import type { Ask } from './asked.ts';
import type { State } from './state.ts';

/** What the panel has done: the background does it, the panel says what came of it. */
export function createDoing(state: State, asked: Ask, after: { drawSoon(): void; recall(): Promise<void> }) {
  let nth = 0;
  let toldFull = false;

  function say(words: string, undo?: string) {
    const said = { words, ...(undo && { undo }), nth: ++nth, fresh: true };
    state.said = said;
    setTimeout(() => {
      said.fresh = false;
    });
    after.drawSoon();
  }

  async function tell(acting: Promise<Acted>): Promise<Acted> {
    const acted = await acting.catch((): Acted => ({ ok: false, reason: 'shell.no-background' }));
    if (acted.ok) await after.recall();
    if (acted.ok && acted.nearlyFull && !toldFull) {
      toldFull = true;
      say(state.t('keeping.room.nearly'));
      return acted;
    }
    const came = cameOf(acted, state.t);
    if (came) say(came.words, came.undo);
    return acted;
  }

  return {
    say: (words: string) => say(words),
    act(act: Act) {
      const sent = act.act === 'change' ? { ...act, changes: carrying(state.remembered, act.changes) } : act;
      const { tab } = state;
      return tell(asked('act', { act: sent, id: crypto.randomUUID(), ...(tab && { tab: tab.id }) }));
    },
    undo: async (key: string) => (await tell(asked('undo', { key }))).ok,
    async forget() {
      const done = await asked('forget', null).then(
        () => true,
        () => false,
      );
      if (done) {
        localStorage.clear();
        await after.recall();
      }
      return done;
    },
  };
}

export type Doing = ReturnType<typeof createDoing>;
