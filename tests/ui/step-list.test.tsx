// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import type { Routine, Step } from '../../src/core/wash-day/routine.ts';
import { StepList } from '../../src/ui/routine/steps/step-list.tsx';
import type { World } from '../../src/ui/world.ts';
import { movedStep } from '../../src/use/acts/matters/routines.ts';
import { washDayInput } from '../../src/use/judge/wash-day-input.ts';
import { madeHead, madeRoutine } from '../keeping/made.ts';
import { fakeWorld, nothing } from './fake-world.ts';
import { settle } from './pressing.ts';

const step = (id: string, kind: Step['kind']): Step => ({
  id,
  kind,
  use: 'rinse-off',
  optional: false,
  cadence: { every: 'wash' },
});
const routine = madeRoutine({
  steps: [step('s1', 'cleanser'), step('s2', 'conditioner'), step('s3', 'gel')],
});
const draw = (world: World, of: Routine) =>
  act(() =>
    render(
      <StepList world={world} routine={of} input={washDayInput(world, of)} findings={[]} />,
      document.body,
    ),
  );
const worldOf = (acting: World['act']) =>
  fakeWorld({ remembered: { ...nothing, heads: [madeHead()], routines: [routine] }, act: acting }).world;
const handleOf = (id: string) => document.querySelector<HTMLElement>(`[data-step="${id}"] .handle`)!;
const up = (handle: HTMLElement) =>
  act(() => void handle.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true })));
afterEach(() => act(() => render(null, document.body)));

it('a moved row keeps the focus, though what stood before is drawn once more before it moves', async () => {
  const world = worldOf(() => new Promise(() => {}));
  await draw(world, routine);
  handleOf('s3').focus();
  await up(handleOf('s3'));
  await draw(world, { ...routine }); // another change was heard of first
  handleOf('s3').blur();
  await draw(world, movedStep(routine, 's3', 1));
  expect(document.activeElement).toBe(handleOf('s3'));
});

it('a move that is refused takes the focus nowhere later', async () => {
  const world = worldOf(async () => ({ ok: false, reason: 'shell.no-background' }));
  await draw(world, routine);
  await up(handleOf('s3'));
  await settle();
  await draw(world, movedStep(routine, 's3', 1)); // by somebody else
  expect(document.activeElement).toBe(document.body);
});
