// @vitest-environment happy-dom
// On a page where asking what stands at a point takes 2 ms, the look for a place gives the page its turn again and
// again. The clock is the test's own: only such questions make it go on.
import { expect, it, vi } from 'vitest';
import '../../src/page/begin-ours.ts';
import type { PaintedList } from '../../src/page/paint/painted-list.ts';
import { bottomEnd } from '../../src/page/paint/where/dock-spots.ts';

const question = 2; // ms
const most = 8 + 3 * question; // ms: what is looked at in one turn, and the questions of its last point

it('looks for bars and for blank places a few milliseconds at a time', async () => {
  let clock = 1000;
  let turnFrom = clock;
  let longest = 0;
  const ask =
    <T>(answer: T) =>
    () => {
      clock += question;
      longest = Math.max(longest, clock - turnFrom);
      return answer;
    };
  vi.spyOn(performance, 'now').mockImplementation(() => clock);
  vi.stubGlobal('requestAnimationFrame', (next: () => void) =>
    setImmediate(() => {
      turnFrom = clock;
      next();
    }),
  );
  vi.stubGlobal('visualViewport', { width: 1200, scale: 1 });
  const questions = {
    elementsFromPoint: ask([document.documentElement]),
    elementFromPoint: ask(document.documentElement),
    caretPositionFromPoint: ask(null),
    querySelector: () => null, // it knows no `:modal`
  };
  Object.assign(Object.getPrototypeOf(document), questions);
  const { dock } = await import('../../src/page/paint/where/dock.ts');
  const strip = document.createElement('section');
  document.body.append(strip);
  Object.assign(strip, { togglePopover: () => true });
  Object.defineProperties(strip, { offsetWidth: { value: 320 }, offsetHeight: { value: 240 } });
  const says = { label: 'Invented', open: [], folded: [] };
  const list = {
    id: 1,
    order: { strip: says, shared: [] },
    scheme: 'light',
    cropped: false,
    element: undefined,
    box: () => new DOMRect(20, 9000, 600, 60),
  } as unknown as PaintedList;
  turnFrom = clock;
  dock(strip, [list], { corner: bottomEnd }, () => undefined).update(true);
  await expect
    .poll(() => strip.classList.contains('open') && !strip.classList.contains('seeking'))
    .toBe(true);
  expect(clock - 1000).toBeGreaterThan(300); // it did look: over 150 questions
  expect(longest).toBeLessThanOrEqual(most);
});
