// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ours } from '../../src/page/ours.ts';
import { type Came, watch } from '../../src/page/read/watch.ts';

let seen: Came[] = [];
let done: AbortController;
beforeEach(() => {
  seen = [];
  done = new AbortController();
  document.body.replaceChildren();
});
afterEach(() => done.abort());

const begin = () => watch(window as Window & typeof globalThis, done.signal, (came) => seen.push(came));
const settled = () => new Promise((next) => setTimeout(next, 260));

it('tells of added subtrees once they have settled, without those inside another', async () => {
  begin();
  const outer = document.createElement('div');
  document.body.append(outer);
  outer.append(document.createElement('p'));
  await settled();
  expect(seen).toEqual([{ added: [outer] }]);
});

it('one pass for more than a thousand elements', async () => {
  begin();
  for (let i = 0; i < 1100; i++) document.body.append(document.createElement('p'));
  await settled();
  expect(seen).toEqual(['much']);
});

it('letters changed in a marked element, and its going', async () => {
  const list = document.createElement('p');
  list.textContent = 'Aqua';
  const holder = document.createElement('div');
  holder.append(list);
  document.body.append(holder);
  const { mark } = begin();
  mark([list]);
  list.firstChild!.nodeValue = 'Aqua, Glycerin';
  await settled();
  expect(seen).toEqual(['changed']);
  holder.remove();
  await settled();
  expect(seen).toEqual(['changed', 'changed']);
});

it('our own host is not news', async () => {
  begin();
  const host = document.createElement('div');
  ours.hosts.add(host);
  document.documentElement.append(host);
  await settled();
  expect(seen).toEqual([]);
});

it('what is added inside an open shadow root', async () => {
  begin();
  const host = document.createElement('div');
  const root = host.attachShadow({ mode: 'open' });
  document.body.append(host);
  await settled();
  const inside = document.createElement('p');
  root.append(inside);
  await settled();
  expect(seen).toEqual([{ added: [host] }, { added: [inside] }]);
});

it('a page that comes back from the cache has moved on', async () => {
  begin();
  window.dispatchEvent(Object.assign(new Event('pageshow'), { persisted: true }));
  await settled();
  expect(seen).toEqual(['restored']);
});

it('rests the longer the longer a look took', async () => {
  const times: number[] = [];
  watch(window as Window & typeof globalThis, done.signal, () => {
    times.push(performance.now());
    const until = performance.now() + 20;
    while (performance.now() < until);
  });
  for (let i = 0; i < 45; i++) {
    document.body.append(document.createElement('p'));
    await new Promise((next) => setTimeout(next, 60));
  }
  await vi.waitFor(() => expect(times.length).toBeGreaterThan(1), 3000);
  expect(times[1]! - times[0]!).toBeGreaterThan(20 * 25);
});

it('nothing after the end', async () => {
  begin();
  document.body.append(document.createElement('p'));
  done.abort();
  await settled();
  expect(seen).toEqual([]);
});
