// Who may ask the background for what: a script in a page may have its page read and act on its own product.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { MessageName } from '../../../src/contract/messages.ts';
import { admitted, requests } from '../../../src/use/acts/requests.ts';
import { noClues } from '../../find/no-clues.ts';
import { madeProduct, madeRoutine } from '../../keeping/made.ts';

const put = { do: 'put', thing: 'products', value: madeProduct() };
const text = { text: 'Aqua', starts: [0], lengths: [4], parents: [0], elements: [{ tag: 'p', parent: -1 }] };
const lists = { url: 'https://shop.example/', title: '', texts: [text], clues: noClues(), canPaint: false };
const met = { text: 'Aqua', facts: { name: 'Foam' } };

describe('a script in a page', () => {
  it('may do these things and nothing else', () => {
    const may = Object.entries(requests).flatMap(([name, { from }]) => (from === 'page' ? [name] : []));
    expect(may.toSorted()).toEqual([
      'bring-shelf',
      'line-rules',
      'list-is-here',
      'page-left',
      'page-lists',
      'shelf',
      'shelf-act',
      'shelf-page',
      'site-here',
      'strip-act',
      'strip-undo',
    ]);
  });
  it.each<[MessageName, unknown]>([
    ['remembered-parts', { heads: 'a 1' }],
    ['forget', null],
    ['act', { act: { act: 'remove', product: 'p1' }, id: 'x' }],
    ['undo', { key: 'undo:1:x' }],
    ['read', [{ text: 'Aqua', use: 'leave-on', kind: 'gel', market: 'eu', readAs: { a: 'b' } }]],
    ['read-tab', { tab: 3 }],
    ['pick-list', { tab: 3 }],
    ['closed-parts', { tab: 3 }],
  ])('may not ask for %s, which a view may', (name, request) => {
    expect(() => admitted(name, request, 'page')).toThrow('not for a page');
    expect(admitted(name, request, 'view')).toEqual(request);
  });
});

describe('a view', () => {
  it('does not speak for a page', () => {
    expect(() => admitted('page-lists', lists, 'view')).toThrow('not for a view');
  });
  it.each([
    { act: 'keep', met, id: 'p1', owned: true },
    { act: 'keep', met, id: 'p1', picture: 'data:image/webp;base64,AAAA' },
    { act: 'keep', met: { ...met, photo: 'data:image/jpeg;base64,AAAA' }, id: 'p1' },
    { act: 'correct-kind', met, kind: 'gel' },
    { act: 'correct-kind', met },
    { act: 'add', met, kind: 'gel', how: 'beside', routine: madeRoutine(), ids: { product: 'p', step: 's' } },
    { act: 'fill-step', routine: 'r1', step: 's' },
    { act: 'pin', pin: { met } },
    { act: 'unpin', pin: { product: 'p1' } },
    { act: 'pause', url: 'https://shop.example' },
    { act: 'read-as', printed: 'Panthenoll', name: { as: 'humectant' } },
    { act: 'change', changes: [put, { do: 'set', settings: { units: 'metric' } }], say: { key: 'log.kept' } },
  ])('may have this done: %o', (act) => {
    expect(admitted('act', { act, id: 'x' }, 'view')).toEqual({ act, id: 'x' });
  });
});

describe('refused whoever asks', () => {
  it.each<[string, MessageName, unknown, 'page' | 'view']>([
    ['an act there is none of', 'act', { act: { act: 'burn' }, id: 'x' }, 'view'],
    ['an action of the strip there is none of', 'strip-act', { list: 0, action: 'erase', id: 'x' }, 'page'],
    ['a list that is no number', 'strip-act', { list: '0', action: 'keep', id: 'x' }, 'page'],
    [
      'a label of 2 MB',
      'act',
      { act: { act: 'keep', met: { ...met, text: 'x'.repeat(2e6) }, id: 'p' }, id: 'x' },
      'view',
    ],
    [
      'a picture of a product above 4 kB',
      'act',
      { act: { act: 'keep', met, id: 'p', picture: `data:image/webp;base64,${'A'.repeat(4000)}` }, id: 'x' },
      'view',
    ],
    [
      'letters without end',
      'page-lists',
      { ...lists, texts: [{ ...text, text: 'x'.repeat(3e6 + 1) }] },
      'page',
    ],
    ['10,000 texts', 'page-lists', { ...lists, texts: Array.from({ length: 10_000 }, () => text) }, 'page'],
    [
      'elements that stand in each other',
      'page-lists',
      {
        ...lists,
        texts: [
          {
            ...text,
            elements: [
              { tag: 'b', parent: 1 },
              { tag: 'b', parent: 0 },
            ],
          },
        ],
      },
      'page',
    ],
    [
      'letters in an element there is none of',
      'page-lists',
      { ...lists, texts: [{ ...text, parents: [7] }] },
      'page',
    ],
    ['a selector as long as a book', 'list-is-here', { selector: 'a'.repeat(5000) }, 'page'],
    ['a tab that is none', 'read-tab', { tab: -1 }, 'view'],
    ['something where nothing belongs', 'forget', { everything: true }, 'view'],
  ])('%s', (_, name, request, asker) => {
    expect(() => admitted(name, request, asker)).toThrow('asked wrongly');
  });
});

it('every message the background answers has its door', () => {
  const folder = join(import.meta.dirname, '../../../entrypoints/background/answers');
  const files = readdirSync(folder).filter((file) => file.startsWith('to-'));
  const answers = files.map((file) => readFileSync(join(folder, file), 'utf8'));
  const names = [...answers.join('\n').matchAll(/^(?: {2}| {4})'?([a-z-]+)'?: ?(?:async )?\(/gm)].map(
    ([, name]) => name,
  );
  expect(names.length).toBeGreaterThan(24);
  expect(names.filter((name) => !Object.hasOwn(requests, name!))).toEqual([]);
});
