// @vitest-environment happy-dom
import { describe, expect, it, vi } from 'vitest';
import { drawnPages, silentPages } from './later/make.ts';
import { scoredPage } from './other/score.ts';
import { ratesOf } from './rates.ts';

// Sixteen languages and 24 shapes of no other set, written before the finder was asked: then it found 88 % of the seen
// half and 85 % of the half that is only ever counted. So many of each that a rate is no accident: names are drawn
// from the dictionary where no public tables lie beside.
const count = 24;

vi.setConfig({ testTimeout: 240_000 });

describe.each([
  ['seen', 0.97, 0.96],
  ['kept', 0.94, 0.93],
] as const)('the %s half of later shops', (half, found, whole) => {
  it(`has at least ${found} of the lists found, and ${whole} of them whole`, () => {
    const rates = ratesOf(drawnPages(half, count).map((page) => scoredPage(document, page)));
    expect(rates.found).toBeGreaterThanOrEqual(found);
    expect(rates.whole).toBeGreaterThanOrEqual(whole);
  });

  it('shows nothing where there is no list', () => {
    expect(silentPages(half, count).flatMap((page) => scoredPage(document, page).texts)).toEqual([]);
  });
});
