import { expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import { keepingParts, stampParts } from '../../src/store/parts.ts';
import { seeds } from '../browser/seeds.ts';
import { nothing } from '../ui/fake-world.ts';
import { slowArea } from './area.ts';

it('a part that did not change is the very one it was', async () => {
  const keeper = createKeeper(slowArea({}, { tells: true }).area);
  await keeper.change(seeds.many);
  const before = await keeper.remembered();
  await keeper.change([{ do: 'set', settings: { glyphSize: 'large' } }]);
  const after = await keeper.remembered();
  expect(after.settings.glyphSize).toBe('large');
  for (const part of ['heads', 'products', 'routines', 'log', 'sites', 'readAs'] as const)
    expect(after[part], part).toBe(before[part]);
  expect(after.settings).not.toBe(before.settings);
  await keeper.change([{ do: 'remove', thing: 'products', id: before.products[0]!.id }]);
  const fewer = await keeper.remembered();
  expect(fewer.products).toHaveLength(before.products.length - 1);
  expect(fewer.log).toBe(before.log);
});

it('parts are sent once to whoever has them, and all of them to whoever asks another', () => {
  const partsFor = stampParts('one');
  const all = partsFor(nothing, {});
  expect(all.parts).toEqual(nothing);
  expect(partsFor(nothing, all.stamps).parts).toEqual({});
  const named = keepingParts({ ...nothing, readAs: { Oakum: 'Glycerin' } }, nothing);
  expect(partsFor(named, all.stamps).parts).toEqual({ readAs: { Oakum: 'Glycerin' } });
  // A worker started anew knows of no stamp of the one before.
  expect(stampParts('two')(named, all.stamps).parts).toEqual(named);
});
