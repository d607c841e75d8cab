import { describe, expect, it } from 'vitest';
import type { Site } from '../../../src/store/remembered.ts';
import { madeRoutine } from '../../keeping/made.ts';
import { done, nothing } from '../knowing.ts';

const url = 'https://shop.example/goods/1';
const site = (rest: Partial<Site> = {}): Site => ({
  origin: 'https://shop.example',
  paused: false,
  notLists: [],
  listsAt: [],
  ...rest,
});
const met = (text: string, facts = {}) => ({
  text,
  facts: { name: 'Foam', url, price: 5, currency: 'EUR', ...facts },
});

describe('what is taught of a site', () => {
  it('keeps what it had before', () => {
    const before = { ...nothing, sites: [site({ notLists: ['a'], listsAt: ['#b'] })] };
    const of = (act: Parameters<typeof done>[1]) => done(before, act).remembered.sites[0];
    expect(of({ act: 'pause', url })).toEqual(site({ paused: true, notLists: ['a'], listsAt: ['#b'] }));
    expect(of({ act: 'not-a-list', url, text: 'Some\n  text' })?.notLists).toEqual(['a', 'Some text']);
    expect(of({ act: 'list-is-here', url, selector: '#b' })?.listsAt).toEqual(['#b']);
    expect(of({ act: 'unlearn', url })).toEqual(site({ kinds: [] }));
  });
  it('a page that is no web page has no site', () => {
    expect(done(nothing, { act: 'pause', url: 'about' }).changes).toEqual([]);
  });
  it('is bounded: a page cannot fill the store through one site', () => {
    let now = nothing;
    for (let i = 0; i < 400; i++) now = done(now, { act: 'not-a-list', url, text: `text ${i}` }).remembered;
    expect(now.sites[0]!.notLists).toHaveLength(300);
    expect(now.sites[0]!.notLists.at(-1)).toBe('text 399');
  });
});

describe('keeping', () => {
  it('a product again is the same product, its changed label first', () => {
    const first = done(nothing, { act: 'keep', met: met('Aqua'), id: 'one' }, '2026-01-01T00:00:00Z');
    const again = done(
      first.remembered,
      { act: 'keep', met: met('Aqua, Glycerin'), id: 'two' },
      '2026-02-01T00:00:00Z',
    );
    expect(again.remembered.products).toMatchObject([
      {
        id: 'one',
        labels: [{ text: 'Aqua, Glycerin' }, { text: 'Aqua' }],
        sources: [{ url, price: 5, currency: 'EUR', seen: '2026-02-01T00:00:00Z' }],
      },
    ]);
    expect(again.say).toEqual({ key: 'products.kept.changed', values: { name: 'Foam' } });
  });
  it('twice in one breath keeps one', () => {
    const first = done(nothing, { act: 'keep', met: met('Aqua'), id: 'one' });
    const again = done(first.remembered, { act: 'keep', met: met('Aqua'), id: 'two' });
    expect(again.remembered.products).toEqual(first.remembered.products);
  });
});

describe('the small picture of a product', () => {
  const picture = 'data:image/webp;base64,AAAA';
  const first = done(nothing, { act: 'keep', met: met('Aqua'), id: 'one', picture }, '2026-01-01T00:00:00Z');
  const key = first.remembered.products[0]!.picture!;
  it('comes with the product it is kept with, and stays the first', () => {
    expect(first.changes).toContainEqual({ do: 'photo', key, data: picture });
    const again = done(first.remembered, {
      act: 'keep',
      met: met('Aqua'),
      id: 'one',
      picture: `${picture}BB`,
    });
    expect(again.remembered.products[0]!.picture).toBe(key);
    expect(again.changes.filter((change) => change.do === 'photo')).toEqual([]);
  });
  it('gives way to a photo of the label that the reader wishes to keep, and the photo to none', () => {
    const photo = 'data:image/jpeg;base64,BBBB';
    const wished = { act: 'keep', met: { ...met('Aqua'), photo }, id: 'one' } as const;
    const { changes, remembered } = done(first.remembered, wished, '2026-01-02T00:00:00Z');
    const own = remembered.products[0]!.picture!;
    expect(own).not.toBe(key);
    expect(changes.filter((each) => each.do === 'photo')).toEqual([
      { do: 'photo', key, data: null },
      { do: 'photo', key: own, data: photo },
    ]);
    expect(JSON.stringify(remembered)).not.toContain(photo);
    const again = done(remembered, { act: 'keep', met: met('Aqua'), id: 'one', picture }).changes;
    expect(again.filter((each) => each.do === 'photo')).toEqual([]);
  });
  it('goes with its product', () => {
    const { changes } = done(first.remembered, { act: 'remove', product: 'one' });
    expect(changes).toContainEqual({ do: 'photo', key, data: null });
  });
  it('of two products made one, one is kept', () => {
    const other = met('Aqua, Glycerin', { name: 'Other', url: 'https://shop.example/2' });
    const both = done(first.remembered, { act: 'keep', met: other, id: 'two', picture }).remembered;
    const { changes, remembered } = done(both, { act: 'merge', kept: 'two', other: 'one' });
    expect(changes).toContainEqual({ do: 'photo', key, data: null });
    expect(remembered.products.map((each) => each.picture)).toEqual([both.products[1]!.picture]);
    const bare = done(first.remembered, { act: 'keep', met: other, id: 'two' }).remembered;
    const merged = done(bare, { act: 'merge', kept: 'two', other: 'one' });
    expect(merged.remembered.products.map((each) => each.picture)).toEqual([key]);
  });
  it('comes with a product that joins a routine', () => {
    const ids = { product: 'one', step: 's' };
    const add = { act: 'add', met: met('Aqua'), kind: 'gel', routine: madeRoutine(), ids, picture } as const;
    expect(done(nothing, add).changes).toContainEqual({
      do: 'photo',
      key: expect.stringContaining('one'),
      data: picture,
    });
  });
});

describe('pinning', () => {
  it('pins what is kept by its id, and nothing twice; the oldest of five goes', () => {
    const kept = done(nothing, { act: 'keep', met: met('Aqua'), id: 'one' }).remembered;
    let now = done(kept, { act: 'pin', pin: { met: met('Aqua') } }).remembered;
    expect(now.settings.pinned).toEqual([{ product: 'one' }]);
    expect(done(now, { act: 'pin', pin: { product: 'one' } }).changes).toEqual([]);
    for (const name of ['a', 'b', 'c', 'd'])
      now = done(now, { act: 'pin', pin: { met: met(name, { name }) } }).remembered;
    expect(now.settings.pinned).toMatchObject(
      ['a', 'b', 'c', 'd'].map((name) => ({ met: { facts: { name } } })),
    );
    const { remembered } = done(now, { act: 'unpin', pin: now.settings.pinned![0]! });
    expect(remembered.settings.pinned).toHaveLength(3);
  });
});

describe('adding to a routine', () => {
  const routine = { id: 'r1', head: 'wren', name: 'Sunday', steps: [], added: '2026-01-01', washEvery: 7 };
  const adding = { met: met('Aqua'), kind: 'gel', routine, ids: { product: 'p', step: 's' } } as const;
  it('keeps the product as the reader said and plans it, in one change', () => {
    const { remembered, say } = done(nothing, { act: 'add', ...adding });
    expect(remembered.products).toMatchObject([{ id: 'p', kind: 'gel', use: 'leave-on' }]);
    expect(remembered.routines).toMatchObject([
      { id: 'r1', steps: [{ id: 's', product: 'p', kind: 'gel' }] },
    ]);
    expect(remembered.settings.routineInUse).toBe('r1');
    expect(say).toEqual({ key: 'routine.add.done', values: { name: 'Foam', routine: 'Sunday' } });
  });
  it('asked twice plans it once', () => {
    const once = done(nothing, { act: 'add', ...adding }).remembered;
    expect(done(once, { act: 'add', ...adding }).remembered.routines).toEqual(once.routines);
  });
  it('a step is filled and emptied', () => {
    const { remembered } = done(nothing, { act: 'add', ...adding });
    const empty = done(remembered, { act: 'fill-step', routine: 'r1', step: 's' }).remembered;
    expect(empty.routines[0]!.steps[0]).not.toHaveProperty('product');
    const full = done(empty, { act: 'fill-step', routine: 'r1', step: 's', product: 'p' }).remembered;
    expect(full.routines[0]!.steps[0]).toHaveProperty('product', 'p');
    expect(done(full, { act: 'fill-step', routine: 'gone', step: 's' }).changes).toEqual([]);
  });
});

it('a product that is removed leaves its steps empty and its pin', () => {
  const met1 = met('Aqua');
  const routine = { id: 'r1', head: 'wren', name: 'Sunday', steps: [], added: '2026-01-01', washEvery: 7 };
  let now = done(nothing, {
    act: 'add',
    met: met1,
    kind: 'gel',
    routine,
    ids: { product: 'p', step: 's' },
  }).remembered;
  now = done(now, { act: 'pin', pin: { product: 'p' } }).remembered;
  const { remembered } = done(now, { act: 'remove', product: 'p' });
  expect(remembered.products).toEqual([]);
  expect(remembered.routines[0]!.steps[0]).not.toHaveProperty('product');
  expect(remembered.settings.pinned).toEqual([]);
});
