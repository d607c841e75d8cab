import { expect, it } from 'vitest';
import { inShot } from '../../src/picture/in-shot.ts';

it.each([
  [800, { left: 10, top: 20, right: 110, bottom: 90 }],
  [1600, { left: 20, top: 40, right: 220, bottom: 180 }],
  [1000, { left: 13, top: 25, right: 138, bottom: 113 }],
])('in a shot %i pixels wide a place of an 800 pixels wide view stands at %j', (shot, box) => {
  expect(inShot({ box: { left: 10, top: 20, right: 110, bottom: 90 }, width: 800 }, shot)).toEqual(box);
});
