import { expect, it } from 'vitest';
import { followStore } from '../../entrypoints/sidepanel/follow-store.ts';
import type { Remembered } from '../../src/store/remembered.ts';
import { stateAt } from '../../src/ui/panel/state.ts';
import { nothing } from '../ui/fake-world.ts';

/** A browser whose store says that it changed when told to. */
function silentBrowser() {
  const heard: (() => void)[] = [];
  const browser = {
    i18n: { getUILanguage: () => 'en' },
    storage: {
      local: { onChanged: { addListener: (listener: () => void) => void heard.push(listener) } },
      session: { get: async () => ({}), onChanged: { addListener: () => {} } },
    },
  } as unknown as typeof chrome;
  return { browser, changed: () => heard.forEach((listener) => void listener()) };
}

const named = (Oakum: string) => ({ ...nothing, readAs: { Oakum } });

it('what changed between an early question and our listening is asked for after its answer', async () => {
  const { browser } = silentBrowser(); // the change was told before anybody listened
  const state = stateAt('products', nothing);
  let drawn = 0;
  const asked: unknown[] = [];
  const { begin } = followStore(browser, state, {
    early: Promise.resolve({ stamps: { readAs: 'first' }, parts: named('before') } as never),
    remembered: async (has) => {
      asked.push(has);
      return { stamps: {}, parts: named('after') };
    },
    failed: () => {},
    drawSoon: () => drawn++,
  });
  begin();
  await expect.poll(() => drawn).toBe(2);
  expect(asked).toEqual([{ readAs: 'first' }]);
  expect(state.remembered.readAs).toEqual({ Oakum: 'after' });
});

it('an early question that failed is said, and the store is asked all the same', async () => {
  const { browser } = silentBrowser();
  const state = stateAt('products', nothing);
  let failed = 0;
  const { begin } = followStore(browser, state, {
    early: Promise.reject(new Error('no background')),
    remembered: async () => ({ stamps: {}, parts: named('after') }),
    failed: () => failed++,
    drawSoon: () => {},
  });
  begin();
  await expect.poll(() => state.remembered.readAs).toEqual({ Oakum: 'after' });
  expect(failed).toBe(1);
});

it('what is asked for while it is being asked is what stands after, not before', async () => {
  const { browser, changed } = silentBrowser();
  const state = stateAt('products', nothing);
  let stored = named('before') as Remembered;
  const answers: (() => void)[] = [];
  const { recall } = followStore(browser, state, {
    remembered: () => {
      const asOfNow = stored;
      return new Promise((answer) => answers.push(() => answer({ stamps: {}, parts: asOfNow })));
    },
    failed: () => {},
    drawSoon: () => {},
  });
  changed(); // under way, asked before the act
  stored = named('after');
  let done = false;
  const recalled = recall().then(() => {
    done = true;
  });
  const again = recall();
  answers.shift()!();
  await new Promise((turn) => setTimeout(turn));
  expect([state.remembered.readAs, done]).toEqual([{ Oakum: 'before' }, false]);
  expect(answers).toHaveLength(1); // once more for all who asked meanwhile
  answers.shift()!();
  await Promise.all([recalled, again]);
  expect(state.remembered.readAs).toEqual({ Oakum: 'after' });
});
