import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change, Remembered } from '../../src/store/remembered.ts';
import { translator } from '../../src/ui/words/index.ts';
import type { World } from '../../src/ui/world.ts';
import { decide } from '../../src/use/acts/acts.ts';
import { carrying } from '../../src/use/acts/carry.ts';
import type { Decided } from '../../src/use/knowing.ts';
import { slowArea } from './area.ts';

const lookup = createLookup(entries, patterns, limits);

/**
 * A world over a real keeper (with a storage area of the tests), for views that keep things: what is shown next
 * is what was really stored and parsed. `draw` is called after every change.
 */
export async function keptWorld(over: Partial<World> = {}, start: Change[] = []) {
  const { area } = slowArea();
  const keeper = createKeeper(area, { now: () => '2026-03-01T12:00:00.000Z' });
  await keeper.change(start);
  const said: string[] = [];
  const saved: { name: string; content: string | Blob }[] = [];
  const undos: Change[][] = [];
  let nth = 0;
  let remembered: Remembered = await keeper.remembered();
  let draw: (world: World) => void = () => undefined;
  const after = async () => {
    remembered = await keeper.remembered();
    draw(world());
  };
  const world = (): World => ({
    t: translator('en'),
    practice,
    today: '2026-03-01',
    now: () => `2026-03-01T12:00:00.${String(nth).padStart(3, '0')}Z`,
    remembered,
    page: null,
    reading: (text, as) => readLabel(text, lookup, readAsOf(as)),
    lookUp: async () => [],
    close: async () => [],
    act: async (act) => {
      let decided: Decided = { changes: [] };
      const outcome = await keeper.change((now) => {
        decided = decide(act, { remembered: now, practice, now: world().now!() });
        return carrying(remembered, decided.changes);
      });
      if (!outcome.ok) return outcome;
      const undo = String(undos.push(outcome.undo!) - 1);
      await after();
      const { say } = decided;
      if (say) world().say(translator('en')(say.key, say.values));
      return { ok: true, undo };
    },
    change: (...changes) => world().act({ act: 'change', changes }),
    undo: async (key) => {
      await keeper.change(undos[Number(key)]!);
      await after();
      return true;
    },
    say: (words) => said.push(words),
    go: () => undefined,
    save: (name, _type, content) => saved.push({ name, content }),
    newId: () => `id-${++nth}`,
    ...over,
  });
  return {
    world,
    keeper,
    said,
    saved,
    remembered: () => remembered,
    /** Takes the newest act back, as its words in the panel would. */
    takeBack: () => world().undo(String(undos.length - 1)),
    onDraw: (how: (world: World) => void) => {
      draw = how;
      draw(world());
    },
  };
}
