import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeCard } from '../../src/page/paint/card.ts';
import { type NameSpot, placeGlyph } from '../../src/page/paint/where/glyph-box.ts';
import { glyphs } from '../../src/ui/glyphs/shapes.ts';

/** A name set at 14 px on 21 px lines, before a comma and a blank. */
const spot: NameSpot = {
  end: 200,
  forward: 1,
  baseline: 100,
  ink: 10,
  gap: 8,
  room: 7.5,
  foot: 6,
  width: 120,
};
const beads = { width: 16, height: 5 };
const drop = { width: 9, height: 11 };

describe('a glyph by its name', () => {
  it('beads hang in the gap over the end of the name', () => {
    const box = placeGlyph(spot, beads)!;
    expect(box.y + box.height).toBeLessThan(spot.baseline - spot.ink);
    expect(box.x).toBeLessThan(spot.end);
    expect(box.x + box.width).toBeGreaterThan(spot.end);
  });

  it('a drop hangs in the gap too: over a comma the two would read as a semicolon', () => {
    const box = placeGlyph(spot, drop)!;
    expect(box.y + box.height).toBeLessThanOrEqual(spot.baseline - spot.ink);
    expect(box.x + box.width).toBeLessThanOrEqual(spot.end + spot.room);
  });

  it('where lines stand close a drop stands after the name, raised over its comma', () => {
    const box = placeGlyph({ ...spot, gap: 4 }, drop)!;
    expect(box.x).toBeGreaterThanOrEqual(spot.end);
    expect(box.x + box.width).toBeLessThanOrEqual(spot.end + spot.room);
    expect(box.y + box.height).toBeLessThanOrEqual(spot.baseline - spot.foot);
  });

  it('none where lines are set solid and nothing is blank after the name', () => {
    expect(placeGlyph({ ...spot, gap: 1, room: 0 }, beads)).toBeUndefined();
    expect(placeGlyph({ ...spot, gap: 1, room: 0 }, drop)).toBeUndefined();
  });

  it('mirrors where letters run to the left', () => {
    const right = placeGlyph(spot, drop)!;
    const left = placeGlyph({ ...spot, forward: -1 }, drop)!;
    expect(left.x + left.width).toBeCloseTo(2 * spot.end - right.x);
  });

  it('keeps off the ink of the name, of its neighbours and of the line above, whatever the type', () => {
    const px = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const spots = fc.record({
      end: px(-500, 2000),
      forward: fc.constantFrom<1 | -1>(1, -1),
      baseline: px(-500, 5000),
      ink: px(4, 40),
      gap: px(-10, 40),
      room: px(0, 40),
      foot: px(1, 4),
      width: px(5, 400),
    });
    fc.assert(
      fc.property(spots, fc.constantFrom(...Object.values(glyphs)), px(0.5, 1.2), (at, glyph, size) => {
        const box = placeGlyph(at, { width: glyph.width * size, height: glyph.height * size });
        if (!box) return;
        const lineAbove = at.baseline - at.ink - at.gap;
        expect(box.y).toBeGreaterThanOrEqual(lineAbove - 1e-6);
        const overInk = box.y + box.height <= at.baseline - at.ink + 1e-6;
        const [near, far] =
          at.forward === 1
            ? [box.x - at.end, box.x + box.width - at.end]
            : [at.end - box.x - box.width, at.end - box.x];
        const inRoom =
          near >= -1e-6 && far <= at.room + 1e-6 && box.y + box.height <= at.baseline - at.foot + 1e-6;
        expect(overInk || inRoom).toBe(true);
      }),
    );
  });
});

it('the card stands under its name, over it where there is no room, and always in view', () => {
  const view = { width: 800, height: 600 };
  const size = { width: 300, height: 200 };
  const name = (left: number, top: number) => new Rect(left, top) as DOMRect;
  expect(placeCard(name(100, 100), size, view).top).toBeGreaterThan(120);
  expect(placeCard(name(100, 500), size, view).top + size.height).toBeLessThan(500);
  expect(placeCard(name(780, 100), size, view).left + size.width).toBeLessThanOrEqual(800);
});

it('a card too high for above and below stands beside its name, on the side that has room', () => {
  const view = { width: 800, height: 600 };
  const size = { width: 300, height: 420 };
  for (const left of [100, 650]) {
    const name = new Rect(left, 290) as DOMRect;
    const at = placeCard(name, size, view);
    expect(at.left >= name.right || at.left + size.width <= name.left).toBe(true);
    expect(at.top).toBeGreaterThanOrEqual(0);
    expect(at.top + size.height).toBeLessThanOrEqual(view.height);
  }
});

class Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  constructor(left: number, top: number) {
    [this.left, this.top, this.right, this.bottom] = [left, top, left + 120, top + 20];
  }
}
