import { expect, it } from 'vitest';
import { photoOf } from '../../src/use/pasted.ts';

const front = { text: 'Aqua, Glycerin, Flumberol, Cetyl Alcohol, Parfum', photo: 'front' };
const back = { text: 'Panthenol, Hydrolyzed Silk, Linalool', photo: 'back' };

it.each([
  ['as it was read', [front], front.text, 'front'],
  ['with a name put right', [front], 'Aqua, Glycerin, Panthenol, Cetyl Alcohol, Parfum', 'front'],
  ['with its lines joined otherwise', [front], front.text.replaceAll(', ', ',\n'), 'front'],
  ['typed on', [front], `${front.text}, Limonene, Citral`, 'front'],
  ['of two photos one after the other', [front, back], `${front.text},\n${back.text}`, 'back'],
  ['of which the second was deleted', [front, back], front.text, 'front'],
  ['of which only the first is kept', [front, { text: back.text }], `${front.text},\n${back.text}`, 'front'],
  [
    'of another product, pasted over it',
    [front],
    'Aqua, Glycerin, Cetyl Alcohol, Behentrimonium Chloride',
    undefined,
  ],
  ['that nobody wishes to keep', [{ text: front.text }], front.text, undefined],
  ['that was emptied', [front], '', undefined],
])('the photo goes with the label it shows: %s', (_, brought, text, photo) => {
  expect(photoOf(brought, text)).toBe(photo);
});
