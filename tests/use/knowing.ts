import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { type Change, nothingRemembered, type Remembered, type Thing } from '../../src/store/remembered.ts';
import { type Act, decide } from '../../src/use/acts/acts.ts';
import type { Knowing } from '../../src/use/knowing.ts';

export const lookup = createLookup(entries, patterns, limits);

export const nothing: Remembered = nothingRemembered();

/** What the background knows when it judges, over the project's own dictionary. */
export const knowing = (remembered: Partial<Remembered> = {}): Knowing => {
  const all = { ...nothing, ...remembered };
  return {
    remembered: all,
    practice,
    today: '2026-03-01',
    reading: (text, as) => readLabel(text, lookup, { readAs: all.readAs, ...readAsOf(as) }),
  };
};

/** What is remembered after changes, as far as tests need it. */
function after(remembered: Remembered, changes: readonly Change[]): Remembered {
  const now = structuredClone(remembered);
  const idOf = (item: object) => ('origin' in item ? item.origin : (item as { id: string }).id);
  for (const change of changes) {
    if (change.do === 'set') Object.assign(now.settings, change.settings);
    if (change.do !== 'put' && change.do !== 'remove') continue;
    const things = now[change.thing as Thing] as object[];
    const id = change.do === 'put' ? idOf(change.value) : change.id;
    const at = things.findIndex((item) => idOf(item) === id);
    const there = at < 0 ? things.length : at;
    things.splice(there, 1, ...(change.do === 'put' ? [change.value] : []));
  }
  return now;
}

/** Does an act by what is remembered. */
export const done = (remembered: Remembered, act: Act, now = '2026-03-01T12:00:00.000Z') => {
  const decided = decide(act, { remembered, practice, now });
  return { ...decided, remembered: after(remembered, decided.changes) };
};
