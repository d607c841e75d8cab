// @vitest-environment happy-dom
// What the panel has done and where it goes; the background is the test.
import { expect, it } from 'vitest';
import type { Acted, Ask } from '../../src/contract/messages.ts';
import { createDoing } from '../../src/ui/panel/doing.ts';
import { createGoing, firstPlace } from '../../src/ui/panel/going.ts';
import { stateAt } from '../../src/ui/panel/state.ts';
import { nothing } from './fake-world.ts';

/** A panel whose background answers the acts it is asked for with these, one after the other. */
function panel(...answers: Acted[]) {
  const state = stateAt('page', nothing);
  const asked: [string, unknown][] = [];
  const ask = (async (name: string, request: unknown) => {
    asked.push([name, request]);
    return answers.shift() ?? { ok: true };
  }) as Ask;
  const doing = createDoing(state, ask, { drawSoon: () => {}, recall: async () => {} });
  const going = createGoing(state, doing, () => {});
  return { state, asked, doing, ...going };
}
const acted = (undo: string): Acted => ({ ok: true, say: { key: 'shell.undone' }, undo });
const keep = { act: 'remove', product: 'p1' } as const;

it('the undo that is offered takes back the act its words tell of, whatever was done since', async () => {
  const { state, asked, doing } = panel(acted('undo:1:kept'), { ok: true, undo: 'undo:2:unsaid' });
  await doing.act(keep);
  const { said } = state;
  await doing.change({ do: 'set', settings: { units: 'imperial' } });
  // Another window's act, or the strip's, is newer still.
  state.undos = [{ key: 'undo:3:elsewhere', changes: [] }];
  expect(state.said).toBe(said);
  await doing.undo(said!.undo!);
  expect(asked.at(-1)).toEqual(['undo', { key: 'undo:1:kept' }]);
});

it('that room is nearly full is told once, beside what the act says and its undo', async () => {
  const { state, doing } = panel(
    { ...acted('undo:1:kept'), nearlyFull: true } as Acted,
    {
      ...acted('undo:2:kept'),
      nearlyFull: true,
    } as Acted,
  );
  await doing.act(keep);
  expect(state.said).toMatchObject({
    words: state.t('shell.undone'),
    undo: 'undo:1:kept',
    also: state.t('keeping.room.nearly'),
  });
  await doing.act(keep);
  expect(state.said).not.toHaveProperty('also');
});

it('words that tell of no act offer no undo', async () => {
  const { state, doing } = panel({ ok: false, reason: 'keeping.full' });
  await doing.act(keep);
  expect(state.said).not.toHaveProperty('undo');
  doing.say('Nothing to see.');
  expect(state.said).toMatchObject({ words: 'Nothing to see.' });
  expect(state.said).not.toHaveProperty('undo');
  doing.dismiss();
  expect(state.said).toBeUndefined();
});

it('a background that does not answer is said', async () => {
  const state = stateAt('page', nothing);
  const ask = (() => Promise.reject(new Error('gone'))) as Ask;
  const doing = createDoing(state, ask, { drawSoon: () => {}, recall: async () => {} });
  expect(await doing.act(keep)).toEqual({ ok: false, reason: 'shell.no-background' });
  expect(state.said!.words).toContain(state.t('shell.no-background'));
});

const page = {
  url: 'https://shop.example/gel',
  title: 'Gel',
  lists: [{ id: 2, text: 'Aqua', via: 'x', frame: 0 }],
};

const met = { text: 'Aqua', facts: { name: 'Gel' } };

it.each([
  ['a list', { place: 'page', list: { frame: 0, id: 2 } }, { list: { frame: 0, id: 2 } }],
  [
    'whom it is for',
    { place: 'page', list: { frame: 0, id: 2 }, whom: true },
    { list: { frame: 0, id: 2 }, whom: true },
  ],
  ['a picture', { place: 'page', picture: { frame: 3 } }, { picture: { frame: 3 } }],
  ['a step to fill', { place: 'routine', list: { frame: 0, id: 2 }, met }, { add: met }],
  ['a list that is gone', { place: 'routine', list: { frame: 0, id: 9 } }, { list: { frame: 0, id: 9 } }],
] as const)('a press on a page opens the panel for %s', async (_, { place, ...what }, detail) => {
  const { state, sent } = panel();
  await sent({ tab: 7, nth: 1, place, ...what });
  expect(state).toMatchObject({ place, detail });
  expect(firstPlace()).toBe(place);
});

it('a list that is to be compared is pinned first; a place that is none changes nothing', async () => {
  const { state, asked, sent } = panel();
  // The tab shows another page by now.
  state.page = { ...page, lists: [{ ...page.lists[0]!, text: 'Urea' }] };
  await sent({ tab: 7, nth: 1, place: 'compare', list: { frame: 0, id: 2 }, met });
  expect(asked[0]).toMatchObject(['act', { act: { act: 'pin', pin: { met: { text: 'Aqua' } } } }]);
  expect(state.place).toBe('compare');
  await sent({ tab: 7, nth: 2, place: '__proto__' });
  expect(state.place).toBe('compare');
});
