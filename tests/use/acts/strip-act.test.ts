import { expect, it } from 'vitest';
import type { TabPage } from '../../../src/contract/messages.ts';
import { actOnStrip, metAtStrip } from '../../../src/use/acts/strip-act.ts';

const text = 'Aqua, Glycerin';
const url = 'https://shop.example/gel';
const page: TabPage = { url, title: 'Gel', lists: [{ id: 2, frame: 0, text, via: 'heading' }] };
const at = { tab: 7, frame: 0, site: 'https://shop.example' };
const pressed = (action: Parameters<typeof actOnStrip>[0]['action'], list = 2) => ({
  list,
  action,
  id: 'new',
});

it('a press comes to the act it names, of the list it was pressed at', () => {
  expect(actOnStrip(pressed('keep'), page, at)).toMatchObject({ act: 'keep', met: { text }, id: 'new' });
  expect(metAtStrip(2, page, at)).toMatchObject({ text, facts: { name: 'Gel', url } });
  expect(actOnStrip(pressed('pause'), page, at)).toEqual({ act: 'pause', url });
  expect(actOnStrip(pressed('not-a-list'), page, at)).toEqual({ act: 'not-a-list', url, text });
});

it.each<[string, TabPage | null, typeof at, number]>([
  ['the tab shows nothing any more', null, at, 2],
  ['the list has gone', page, at, 3],
  ['the list stands in another frame', page, { ...at, frame: 4 }, 2],
  ['the tab shows another site by now', page, { ...at, site: 'https://other.example' }, 2],
])('%s: nothing is done, and said why', (_, shown, where, list) => {
  for (const action of ['keep', 'pause', 'not-a-list'] as const)
    expect(actOnStrip(pressed(action, list), shown, where)).toEqual({ reason: 'page.done.gone' });
  expect(metAtStrip(list, shown, where)).toBeUndefined();
});
