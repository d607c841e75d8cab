// @vitest-environment happy-dom
import { describe, expect, it, vi } from 'vitest';
import { ratesOf } from './rates.ts';
import { drawn, shapeNames } from './shapes/make.ts';
import { scored } from './shapes/score.ts';
import { silentDrawn, silentShapeNames } from './shapes/silent.ts';

// Shapes after real shops, names from the inventory, wording invented. The unseen set was only ever counted.
const count = 12;

vi.setConfig({ testTimeout: 120_000 });

describe.each([
  ['seen', 0.98, 0.98],
  ['unseen', 0.95, 0.93],
] as const)('%s shapes', (set, found, whole) => {
  it(`finds at least ${found} of the lists, and ${whole} of them whole`, () => {
    const rates = ratesOf(
      shapeNames
        .flatMap((shape) => drawn(shape, count, set))
        .map(({ body, wanted, also }) => scored(document, body, wanted, also)),
    );
    expect(rates.found).toBeGreaterThanOrEqual(found);
    expect(rates.whole).toBeGreaterThanOrEqual(whole);
  });

  it('is silent where there is no list', () => {
    const shown = silentShapeNames
      .flatMap((shape) => silentDrawn(shape, count, set))
      .flatMap((body) => scored(document, body, []).texts);
    expect(shown.length).toBeLessThanOrEqual(set === 'seen' ? 0 : 1);
  });
});
