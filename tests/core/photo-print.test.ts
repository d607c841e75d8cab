// Print in photos: where it stands, which way it runs, and its light. Drawn data, made here.
import { describe, expect, it } from 'vitest';
import { noiseOf, sharpened, withoutNoise } from '../../src/core/picture/edges.ts';
import { evenlyLit } from '../../src/core/picture/even-light.ts';
import { printIn } from '../../src/core/picture/find-print.ts';
import type { Grey } from '../../src/core/picture/grey.ts';
import type { Box } from '../../src/core/picture/join-lines.ts';
import { edgeWidth, isOnItsSide } from '../../src/core/picture/measure-print.ts';

const drawn = (width: number, height: number, at: (x: number, y: number) => number): Grey => ({
  pixels: Uint8Array.from({ length: width * height }, (_, i) => at(i % width, Math.floor(i / width))),
  width,
  height,
});

/** Strokes of letters in lines 20 pixels apart, within a box; `slope` is how far lines sink by the pixel. */
const isPrint = (x: number, y: number, { left, top, right, bottom }: Box, slope = 0) => {
  if (x < left || x >= right || y < top || y >= bottom) return false;
  const [column, line] = [(x - left) % 60, (((y - top - slope * x) % 20) + 20) % 20];
  const word = column < 48 && line < 9;
  return word && (column % 8 < 2 || (line % 4 < 1 && column % 8 < 6));
};

describe('where print stands', () => {
  const box = { left: 400, top: 300, right: 760, bottom: 440 };
  const tiles = (x: number, y: number) => (x % 150 < 5 || y % 120 < 5 ? 120 : 180);
  const around = { left: 370, top: 270, right: 790, bottom: 470 };
  const photo = (print: number, paper: number) =>
    drawn(1000, 800, (x, y) => {
      if (isPrint(x, y, box)) return print;
      return x > around.left && x < around.right && y > around.top && y < around.bottom ? paper : tiles(x, y);
    });

  it.each([
    ['dark', 40, 230],
    ['light', 240, 60],
  ])('%s print among tiles is cut out whole, and the tiles are not', (_, print, paper) => {
    const found = printIn(photo(print, paper))!;
    expect(found.left).toBeLessThan(box.left);
    expect(found.top).toBeLessThan(box.top);
    expect(found.right).toBeGreaterThanOrEqual(box.right);
    expect(found.bottom).toBeGreaterThanOrEqual(box.bottom);
    expect(found.left).toBeGreaterThan(box.left - 60);
    expect(found.right).toBeLessThan(box.right + 60);
  });

  it('two blocks are kept together', () => {
    const second = { left: 100, top: 650, right: 330, bottom: 760 };
    const both = drawn(1000, 800, (x, y) => (isPrint(x, y, box) || isPrint(x, y, second) ? 30 : 220));
    const found = printIn(both)!;
    expect([found.left < second.left, found.right >= box.right]).toEqual([true, true]);
    expect([found.top < box.top, found.bottom >= second.bottom]).toEqual([true, true]);
  });

  it('a picture full of print, an empty one and bare tiles are left whole', () => {
    const full = { left: 20, top: 20, right: 980, bottom: 780 };
    expect(printIn(drawn(1000, 800, (x, y) => (isPrint(x, y, full) ? 30 : 220)))).toBeUndefined();
    expect(printIn(drawn(300, 200, () => 200))).toBeUndefined();
    expect(printIn(drawn(4, 4, () => 200))).toBeUndefined();
  });
});

describe('which way lines run', () => {
  const box = { left: 30, top: 30, right: 570, bottom: 230 };
  it.each([0, 0.05, -0.14])('from left to right, sinking by %d', (slope) => {
    const upright = drawn(600, 260, (x, y) => (isPrint(x, y, box, slope) ? 0 : 255));
    const turned = drawn(260, 600, (x, y) => (isPrint(y, x, box, slope) ? 0 : 255));
    expect([isOnItsSide(upright), isOnItsSide(turned)]).toEqual([false, true]);
  });

  it('an empty picture is left as it is held', () => {
    expect(isOnItsSide(drawn(200, 100, () => 255))).toBe(false);
  });
});

describe('light', () => {
  const box = { left: 20, top: 20, right: 580, bottom: 380 };
  /** Shares of print that came out dark and of paper that came out light. */
  const kept = (light: (x: number, y: number) => number) => {
    const { pixels, width } = evenlyLit(
      drawn(600, 400, (x, y) => light(x, y) * (isPrint(x, y, box) ? 50 : 230)),
    );
    const of = { print: 0, dark: 0, paper: 0, light: 0 };
    for (const [i, pixel] of pixels.entries()) {
      const print = isPrint(i % width, Math.floor(i / width), box);
      of[print ? 'print' : 'paper']++;
      if (print && pixel < 128) of.dark++;
      if (!print && pixel >= 128) of.light++;
    }
    return [of.dark / of.print, of.light / of.paper];
  };

  it.each<[what: string, light: (x: number, y: number) => number]>([
    ['is even', () => 1],
    ['falls from one side', (x) => 1 - x / 900],
    ['falls from above', (_, y) => 1 - y / 600],
    ['is dim', () => 0.3],
    ['has a shadow with a soft edge', (x) => 1 - 0.6 / (1 + Math.exp((300 - x) / 25))],
  ])('that %s leaves print dark and paper light', (_, light) => {
    const [dark, paper] = kept(light);
    expect(dark).toBeGreaterThan(0.97);
    expect(paper).toBeGreaterThan(0.99);
  });

  it('an empty picture stays empty, one too small for squares as it is', () => {
    expect(new Set(evenlyLit(drawn(600, 400, () => 90)).pixels)).toEqual(new Set([255]));
    expect(new Set(evenlyLit(drawn(100, 80, () => 90)).pixels)).toEqual(new Set([90]));
  });
});

describe('edges and noise', () => {
  /** A stripe whose edges take `soft` pixels each; every pixel off by up to so many greys. */
  const stripe = (soft: number, noise = 0) =>
    drawn(200, 120, (x, y) => {
      const edge = Math.min(1, Math.max(0, (Math.abs(x - 100) - 20) / soft + 0.5));
      const off = noise * (((x * 7919 + y * 104729 + x * y * 31) % 101) / 50 - 1);
      return Math.min(255, Math.max(0, 60 + 150 * edge + off));
    });

  it('a soft edge takes half as many pixels when it is sharpened', () => {
    expect(edgeWidth(sharpened(stripe(8), 4))).toBeLessThan(edgeWidth(stripe(8)) / 2);
  });

  it('an even ground stays as it is', () => {
    const ground = drawn(60, 40, () => 130);
    expect(sharpened(ground, 3).pixels).toEqual(ground.pixels);
    expect([withoutNoise(ground), noiseOf(ground)]).toEqual([ground, 0]);
  });

  it('noise is taken off where there is much, and nothing where there is little', () => {
    const noisy = stripe(2, 45);
    expect(noiseOf(withoutNoise(noisy))).toBeLessThan(noiseOf(noisy) / 2);
    const still = stripe(2, 4);
    expect(withoutNoise(still)).toBe(still);
  });
});
