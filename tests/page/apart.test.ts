// @vitest-environment happy-dom
import { describe, expect, it, vi } from 'vitest';
import { drawnPages, silentPages } from './apart/make.ts';
import { scoredPage } from './other/score.ts';

// 52 shapes of shops and 28 kinds of pages without a list, written before anything of the finder was opened: then it
// found 93 % of the seen half and 97 % of the half that is only ever counted.
const count = 12;

vi.setConfig({ testTimeout: 240_000 });

describe.each([
  ['seen', 0.97, 0.96],
  ['kept', 0.93, 0.9],
] as const)('the %s half of shops apart', (half, found, whole) => {
  it(`has at least ${found} of the lists found, and ${whole} of them whole`, () => {
    const scores = drawnPages(half, count).map((page) => scoredPage(document, page));
    expect(scores.filter((score) => score.found).length / scores.length).toBeGreaterThanOrEqual(found);
    expect(scores.filter((score) => score.whole).length / scores.length).toBeGreaterThanOrEqual(whole);
  });
});

it('shows nothing where the seen half holds no list', () => {
  expect(silentPages('seen', count).flatMap((page) => scoredPage(document, page).texts)).toEqual([]);
});
