import { expect, it } from 'vitest';
import { early, takeEarly } from '../../entrypoints/sidepanel/early-answer.ts';
import { nothing } from '../ui/fake-world.ts';

it('what was asked before the panel’s files were read is taken once', async () => {
  expect(takeEarly()).toBeUndefined();
  early.remembered = Promise.resolve({ stamps: {}, parts: nothing });
  expect(await takeEarly()).toEqual({ stamps: {}, parts: nothing });
  expect(takeEarly()).toBeUndefined();
});
