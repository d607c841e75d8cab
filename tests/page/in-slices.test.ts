import { describe, expect, it } from 'vitest';
import { finished, inSlices, type Work } from '../../src/page/read/in-slices.ts';

/** Work of some parts that take so many ms each. */
function* parts(n: number, each: number): Work<number> {
  for (let i = 0; i < n; i++) {
    for (const from = performance.now(); performance.now() - from < each; );
    yield;
  }
  return n;
}

describe('work in slices', () => {
  it('is done at once where it takes little', () => {
    let done = false;
    inSlices(parts(5, 0), () => {
      done = true;
    });
    expect(done).toBe(true);
  });

  it('lets the page have its turn where it takes long, and says how long it took', async () => {
    let turns = 0;
    const timer = setInterval(() => turns++, 0);
    const took = await new Promise<number>((done) => inSlices(parts(20, 5), done));
    clearInterval(timer);
    expect(turns).toBeGreaterThan(2);
    expect(took).toBeGreaterThanOrEqual(100);
  });

  it('is over where it throws', () => {
    let over = false;
    // biome-ignore lint/correctness/useYield: what throws before its first pause
    const broken = function* (): Work<void> {
      throw new Error('a page that fights back');
    };
    expect(() =>
      inSlices(broken(), () => {
        over = true;
      }),
    ).toThrow('fights back');
    expect(over).toBe(true);
  });

  it('can be had in one go', () => expect(finished(parts(3, 0))).toBe(3));
});
