// What can be held against other programs, or against plain work, without a browser.
import Fuse from 'fuse.js';
import { entries, findingFacts, limits, patterns } from '../../../dictionary/index.ts';
import { practice } from '../../../dictionary/practice.ts';
import type { Acted } from '../../../src/contract/messages.ts';
import { type Amount, shareBounds } from '../../../src/core/amounts/bounds.ts';
import { atOnce } from '../../../src/core/at-once.ts';
import { createLookup } from '../../../src/core/names/lookup.ts';
import { suggest } from '../../../src/core/plan/suggest.ts';
import { readLabel } from '../../../src/core/reading/reading.ts';
import { createFinder } from '../../../src/find/finder.ts';
import { findingLists } from '../../../src/find/lists-in.ts';
import { looseText } from '../../../src/find/text/page-text.ts';
import { createKeeper } from '../../../src/store/keeper.ts';
import { createActing } from '../../../src/use/acts/acting.ts';
import { bruteForce } from '../../core/plan/every-change.ts';
import { randomDay } from '../../core/random-day.ts';
import { slowArea } from '../../keeping/area.ts';
import { madeProduct, madeRoutine } from '../../keeping/made.ts';
import { solve } from '../../published/solve-bounds.ts';
import { goods } from '../../store/goods.ts';
import { fortyNames } from '../bench-page.ts';
import { byTurns, type Pair } from './pairs.ts';

export async function pairsInNode(): Promise<Pair[]> {
  const lookup = createLookup(entries, patterns, limits);
  const finder = createFinder(entries, lookup, findingFacts);
  const fuse = new Fuse(entries, { keys: ['name', 'aliases'] });
  const names = fortyNames.split(', ');
  let round = 0; // a lookup remembers: each run has other noise
  const noisy = () => {
    round++;
    for (const name of names) {
      const printed = `${name.toUpperCase()}${'*'.repeat(round)}`;
      if (lookup.find(printed).how === 'none') lookup.close(printed);
    }
  };
  const prose = 'Words of the shop before and after the list, which say nothing of note.\n'.repeat(800);
  const page = looseText(`${prose}Ingredients\n${fortyNames}\n${prose.slice(0, 3000)}`);
  const amounts: Amount[] = [100, 100, 60, 25, 5, 2.95, 1, 0.59, 0.02].map((most) => ({
    least: 0,
    most,
    free: false,
  }));
  const days = [1, 2, 3, 4, 5, 6].map((seed) => randomDay(seed, 4, 8));
  const { keep, add, keepAndUndo } = actingInMany();

  return [
    await byTurns(
      '40 noisy names beside Fuse over all names',
      noisy,
      () => names.map((name) => fuse.search(name)),
      {
        rounds: 2,
        times: 20,
        besideTimes: 1,
      },
    ),
    await byTurns('40 names read beside calibration', () => readLabel(fortyNames, lookup), undefined, {
      times: 50,
    }),
    await byTurns('lookup built beside calibration', () => createLookup(entries, patterns, limits)),
    await byTurns('finding in a page of 60 kB beside calibration', () =>
      atOnce(findingLists([page], undefined, finder)),
    ),
    await byTurns(
      'bounds of 9 shares beside HiGHS',
      () => shareBounds(amounts, 1),
      () => amounts.flatMap((_, k) => [solve(amounts, 1, k, 'Minimize'), solve(amounts, 1, k, 'Maximize')]),
      { times: 50, besideTimes: 1 },
    ),
    await byTurns(
      'suggest beside every set of changes',
      () => days.map((day) => suggest(day)),
      () => days.map((day) => bruteForce(day, 3)),
      { besideTimes: 1 },
    ),
    await byTurns('keep, in 10,000 products, beside calibration', keep, undefined, { rounds: 4 }),
    await byTurns('add, in 10,000 products, beside calibration', add, undefined, { rounds: 4 }),
    await byTurns('keep and undo, in 10,000 products, beside calibration', keepAndUndo, undefined, {
      rounds: 4,
    }),
  ];
}

/** Acts of a reader who has 10,000 products, each time on another product. */
function actingInMany() {
  const values: Record<string, unknown> = { store: { version: 2 } };
  for (let i = 0; i < 10_000; i++) {
    const { name, maker, list } = goods[i % goods.length]!;
    const labels = [{ text: list, seen: '2026-01-02T10:00:00.000Z' }];
    values[`products:p${i}`] = madeProduct({ id: `p${i}`, name: `${name} ${i}`, maker, labels, sources: [] });
  }
  const kept = slowArea();
  const session = {
    get: (key: string | null) => kept.area.get(key === null ? null : [key]),
    set: kept.area.set,
    remove: kept.area.remove,
  };
  const { act, undo } = createActing({
    reading: () => () => undefined,
    keeper: createKeeper(slowArea(values, { quota: 1e9, tells: true }).area),
    session,
    practice,
  });
  let nth = 0;
  const done = (acted: Acted): Acted & { ok: true } => {
    if (!acted.ok) throw new Error(acted.reason);
    return acted;
  };
  const next = () => {
    const id = `new${nth++}`;
    return { id, met: { text: 'Aqua, Glycerin', facts: { name: id, url: `https://shop.example/${id}` } } };
  };
  const keep = async () => {
    const { id, met } = next();
    return done(await act({ act: 'keep', met, id }, id));
  };
  return {
    keep,
    async add() {
      const { id, met } = next();
      const routine = madeRoutine({ steps: [] });
      const ids = { product: id, step: `step-${id}` };
      done(await act({ act: 'add', met, kind: 'foam', how: 'beside', routine, ids }, id));
    },
    async keepAndUndo() {
      const { undo: key } = await keep();
      done(await undo(key!));
    },
  };
}
