import type { Acted, Ask } from '../../contract/messages.ts';
import type { Change } from '../../store/remembered.ts';
import type { Act } from '../../use/acts/acts.ts';
import { carrying } from '../../use/acts/carry.ts';
import { cameOf } from '../describe/came-of.ts';
import type { State } from './state.ts';

/** What the panel has done: the background does it, the panel says what came of it. */
export function createDoing(state: State, asked: Ask, after: { drawSoon(): void; recall(): Promise<void> }) {
  let nth = 0;
  let toldFull = false;

  function say(words: string, undo?: string, also?: string) {
    const said = { words, ...(undo && { undo }), ...(also && { also }), nth: ++nth, fresh: true };
    state.said = said;
    setTimeout(() => {
      said.fresh = false;
    });
    after.drawSoon();
  }

  async function tell(acting: Promise<Acted>): Promise<Acted> {
    const acted = await acting.catch((): Acted => ({ ok: false, reason: 'shell.no-background' }));
    if (acted.ok) await after.recall();
    const came = cameOf(acted, state.t);
    const full = acted.ok && acted.nearlyFull && !toldFull ? state.t('keeping.room.nearly') : undefined;
    if (full) toldFull = true;
    if (came) say(came.words, came.undo, full);
    else if (full) say(full);
    return acted;
  }

  function act(act: Act): Promise<Acted> {
    const sent = act.act === 'change' ? { ...act, changes: carrying(state.remembered, act.changes) } : act;
    const { tab } = state;
    return tell(asked('act', { act: sent, id: crypto.randomUUID(), ...(tab && { tab: tab.id }) }));
  }

  return {
    say: (words: string) => say(words),
    act,
    change: (...changes: Change[]) => act({ act: 'change', changes }),
    dismiss() {
      state.said = undefined;
      after.drawSoon();
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
