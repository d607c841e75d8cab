// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { Welcome } from '../../src/ui/welcome/welcome.tsx';
import type { World } from '../../src/ui/world.ts';
import { fakeWorld } from './fake-world.ts';

const draw = async (over: Partial<World> = {}) => {
  const { world, told } = fakeWorld(over);
  await act(() => render(<Welcome world={world} said={undefined} onDismiss={() => {}} />, document.body));
  return told;
};
const press = (name: string) =>
  act(async () =>
    [...document.querySelectorAll('button')].find((each) => each.textContent === name)!.click(),
  );
afterEach(() => render(null, document.body));

it('paints the sample as a shop page would be painted', async () => {
  await draw();
  expect(
    [...document.querySelectorAll('.painted')].map((each) => [each.className, each.textContent]),
  ).toEqual([
    ['painted softens', 'Cetearyl Alcohol'],
    ['painted draws', 'Glycerin'],
    ['painted large', 'Hydrolyzed Wheat Protein'],
    ['painted small', 'Hydrolyzed Silk'],
    ['painted draws', 'Panthenol'],
  ]);
});

it('reads the sample when asked', async () => {
  await draw();
  expect(document.querySelector('.mentions')).toBeNull();
  await press('Read this list');
  expect(document.querySelectorAll('.mention').length).toBe(5);
});

it('makes the first head with the first answer', async () => {
  const told = await draw();
  await act(async () =>
    [...document.querySelectorAll('button')].find((each) => each.textContent?.startsWith('Fine'))!.click(),
  );
  expect(told.changes[0]).toMatchObject({ do: 'put', thing: 'heads', value: { thickness: 'fine' } });
});

it('remembers that it was seen, and goes on to the panel', async () => {
  const told = await draw();
  await press('Open the panel');
  expect(told.changes).toEqual([{ do: 'set', settings: { welcomed: true } }]);
  expect(told.went).toEqual([['page', undefined]]);
});
