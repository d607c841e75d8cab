// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { drawingAround } from '../../../src/page/shelf/under-press.ts';

let bar: HTMLElement;
let drawn: string[];
let ending: AbortController;
let draw: (words: string) => void;
beforeEach(() => {
  vi.useFakeTimers();
  bar = document.createElement('section');
  document.body.replaceChildren(bar);
  drawn = [];
  ending = new AbortController();
  const around = drawingAround(bar, window, ending.signal);
  draw = (words) => around(() => drawn.push(words));
});
afterEach(() => {
  ending.abort();
  vi.useRealTimers();
});
const press = () => bar.dispatchEvent(new Event('pointerdown', { bubbles: true }));
const release = (type = 'pointerup') => document.body.dispatchEvent(new Event(type, { bubbles: true }));

it('draws at once where nothing is pressed', () => {
  draw('1 read');
  document.body.dispatchEvent(new Event('pointerdown', { bubbles: true })); // beside the bar
  draw('2 read');
  release();
  draw('3 read');
  expect(drawn).toEqual(['1 read', '2 read', '3 read']);
});

it.each(['pointerup', 'pointercancel'])('draws the newest alone once the press ends by %s', (type) => {
  press();
  draw('1 read');
  draw('2 read');
  vi.advanceTimersByTime(900);
  expect(drawn).toEqual([]);
  release(type);
  expect(drawn).toEqual([]); // the click has yet to come
  vi.advanceTimersByTime(100);
  expect(drawn).toEqual(['2 read']);
  draw('3 read');
  expect(drawn).toEqual(['2 read', '3 read']);
});

it('draws as soon as the click was heard', () => {
  press();
  release();
  draw('1 read');
  bar.dispatchEvent(new Event('click', { bubbles: true }));
  vi.advanceTimersByTime(0);
  expect(drawn).toEqual(['1 read']);
});

it('a press that never ends holds nothing up for good', () => {
  press();
  draw('1 read');
  vi.advanceTimersByTime(3000);
  expect(drawn).toEqual(['1 read']);
});

it('draws nothing any more once it is taken back', () => {
  press();
  draw('1 read');
  ending.abort();
  vi.advanceTimersByTime(5000);
  expect(drawn).toEqual([]);
});
