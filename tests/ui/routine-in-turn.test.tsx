// @vitest-environment happy-dom
// What a press on Routine has to draw before it is answered: the day itself. All else comes in tasks of its own.
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { defaultSettings } from '../../src/store/remembered.ts';
import { RoutinePlace } from '../../src/ui/places/routine.tsx';
import { madeHead, madeProduct, madeRoutine } from '../keeping/made.ts';
import { fakeWorld } from './fake-world.ts';

afterEach(() => act(() => render(null, document.body)));

const worldWith = (n: number) => {
  const products = Array.from({ length: n }, (_, i) => madeProduct({ id: `p${i}`, name: `Product ${i}` }));
  const [head, routine] = [madeHead(), madeRoutine()];
  const settings = { ...defaultSettings, headInUse: head.id, routineInUse: routine.id };
  const remembered = {
    heads: [head],
    products,
    routines: [routine],
    log: [],
    sites: [],
    readAs: {},
    settings,
  };
  return fakeWorld({ remembered }).world;
};
const there = () =>
  Object.fromEntries(
    ['.step-row', '#wash-day', '.print-sheet'].map((each) => [each, document.querySelector(each) !== null]),
  );

it.each([
  [5, { '.step-row': true, '#wash-day': true, '.print-sheet': false }],
  [400, { '.step-row': true, '#wash-day': false, '.print-sheet': false }],
])('with %i products', async (n, first) => {
  render(<RoutinePlace world={worldWith(n)} />, document.body);
  expect(there()).toEqual(first);
  await expect.poll(there).toEqual({ '.step-row': true, '#wash-day': true, '.print-sheet': true });
});
