// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import { Welcome } from '../../src/ui/welcome/welcome.tsx';
import type { World } from '../../src/ui/world.ts';
import { fakeWorld, nothing } from './fake-world.ts';

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
    ['painted large', 'Hydrolyzed Wheat Protein'],
    ['painted draws', 'Glycerin'],
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

it('answers for the sample: first what is missing, then for the hair as it is described', async () => {
  await draw();
  const answer = () => document.querySelector('.sample figcaption')?.textContent;
  expect(answer()).toMatch(/^Cannot tell yet/);
  const head = { damage: { kinds: [] }, avoid: [], stretch: [], setAside: [], added: '2026-01-01' };
  const coarse: Head = { ...head, id: 'me', name: 'My hair', thickness: 'coarse', porosity: 'low' };
  await draw({ remembered: { ...nothing, heads: [coarse] } });
  const first = answer();
  expect(first).toMatch(/your hair/);
  await draw({ remembered: { ...nothing, heads: [{ ...coarse, thickness: 'fine', porosity: 'high' }] } });
  expect(answer()).not.toBe(first);
});

it('says at most 150 words, its sample aside, before the button that goes on', async () => {
  const reach = {
    origin: 'https://shop.example',
    here: false,
    everywhere: false,
    origins: [],
    allow: async () => true,
    withdraw: async () => true,
    readNow: async () => true,
    pickList: async () => true,
  };
  await draw({ reach });
  for (const closed of document.querySelectorAll('details:not([open]), [hidden], .sample')) closed.remove();
  const [before] = document.body.textContent!.split('Open the panel');
  const words = before!.match(/[\p{L}’]+/gu) ?? [];
  expect(words.length).toBeLessThanOrEqual(150);
});
