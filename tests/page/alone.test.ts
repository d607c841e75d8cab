// @vitest-environment happy-dom
// What is sent alone into a page arrives as its text: a name from around it would not be there.
import { beforeEach, expect, it } from 'vitest';
import { closedLabels } from '../../src/page/alone/closed-labels.ts';
import { leave } from '../../src/page/alone/leave.ts';
import { pictureInView } from '../../src/page/alone/picture-in-view.ts';
import { seenPicture } from '../../src/page/alone/seen-picture.ts';

/** A function as it arrives in the page. */
const arrived = <F>(sent: F): F => new Function(`return (${sent})`)();

const at = (x: number, y: number, width: number, height: number) => () => new DOMRect(x, y, width, height);

beforeEach(() => {
  document.body.innerHTML = '';
});

it('closed accordions, tabs and dialogs are told by their words, open ones are not', () => {
  document.body.innerHTML = `<details><summary> What is
    in it </summary></details><details open><summary>Use</summary></details>
    <button aria-expanded="false">Ingredients</button><button aria-expanded="true">Delivery</button>
    <a role="tab" aria-selected="false">Composition</a><button aria-haspopup="dialog">${'long '.repeat(20)}</button>`;
  expect(arrived(closedLabels)()).toEqual(['What is in it', 'Ingredients', 'Composition']);
});

it('what is left for our files lies beside what lay there', () => {
  arrived(leave)({ sheet: 'a{}' });
  arrived(leave)({ sheet: 'b{}', pick: 'Point at it' });
  const world = globalThis as { [key: symbol]: unknown };
  expect(world[Symbol.for('strandline')]).toMatchObject({ sheet: 'b{}', pick: 'Point at it' });
});

it('of the pictures in view the largest is told, or the one asked for, cut to the view', () => {
  document.body.innerHTML = '<canvas id="small"></canvas><canvas id="large"></canvas><img id="named">';
  const [small, large, named] = document.querySelectorAll<HTMLElement>('canvas, img');
  small!.getBoundingClientRect = at(0, 0, 100, 80);
  large!.getBoundingClientRect = at(-20, 10, 220, 100);
  named!.getBoundingClientRect = at(5, 5, 70, 70);
  for (const each of [small, large, named]) each!.checkVisibility = () => true;
  Object.defineProperty(named, 'currentSrc', { value: 'https://shop.example/a.png' });
  expect(arrived(pictureInView)(null)?.box).toEqual({ left: 0, top: 10, right: 200, bottom: 110 });
  expect(arrived(pictureInView)('https://shop.example/a.png')?.box).toEqual({
    left: 5,
    top: 5,
    right: 75,
    bottom: 75,
  });
  expect(arrived(pictureInView)('https://shop.example/gone.png')).toBeNull();
});

it('a page that came in the place of the product’s has no picture of it', async () => {
  document.body.innerHTML = '<img>';
  const image = document.querySelector('img')!;
  for (const [name, value] of Object.entries({ complete: true, naturalWidth: 90, naturalHeight: 90 }))
    Object.defineProperty(image, name, { value });
  image.checkVisibility = () => true;
  image.getBoundingClientRect = at(0, 0, 90, 90);
  const { href } = location;
  // On that page it gets as far as drawing, and there is nothing to draw with here.
  await expect(arrived(seenPicture)(null, 96, null, href)).rejects.toThrow(/null/);
  expect(
    await arrived(seenPicture)(null, 96, null, new URL('/other', 'https://shop.example').href),
  ).toBeNull();
});

it('a page without a picture of a product has none to show', async () => {
  document.body.innerHTML = '<img>';
  expect(await arrived(seenPicture)(null, 96)).toBeNull();
});
