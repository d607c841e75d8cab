import { expect, it } from 'vitest';
import { shotOfTab } from '../../src/picture/shot-of-tab.ts';

const gel = { active: true, windowId: 1, url: 'https://shop.example/gel', status: 'complete' };

/** A browser whose tab is one thing before the shot and another after it. */
const tabs = (before: object, after: object) => {
  const told = [before, after];
  return {
    get: async () => ({ ...gel, ...told.shift() }),
    captureVisibleTab: async () => 'data:image/png;base64,AA==',
  };
};

it('what a tab shows is taken while it stands', async () => {
  expect(await shotOfTab(tabs({}, {}), 7)).toBe('data:image/png;base64,AA==');
  expect(await shotOfTab(tabs({ status: 'loading' }, {}), 7)).toBeDefined();
});

it.each([
  ['is not in view', { active: false }, {}],
  ['left the view meanwhile', {}, { active: false }],
  ['went on to another page meanwhile', {}, { url: 'https://shop.example/foam' }],
  ['is on its way to one', {}, { status: 'loading' }],
])('nothing is taken of a tab that %s', async (_, before, after) => {
  expect(await shotOfTab(tabs(before, after), 7)).toBeUndefined();
});
