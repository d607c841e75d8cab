import { noiseOf } from './edges.ts';
import type { Grey } from './grey.ts';

const fewest = 6; // squares across, that a shadow's edge or a spot of gloss is followed
const smallest = 48; // pixels of a square: more than the strokes of large print
const paper = 0.8; // of a square's pixels in order: print covers fewer than the rest
const strokes = 0.04; // of a square's pixels in order: its print, where it has any
const faintest = 0.3; // of the picture's contrast: what is weaker in a square is its ground
const deep = 12; // steps of noise: less than this is no print
const strongest = 0.9; // of the picture's contrast: noise may take no more
const plainest = 10; // greys: less is no print but noise

/** What squares of a picture have in common at a place, from what they have in their middles. */
type Over = { values: Float32Array; across: number; down: number; side: number };

/**
 * Print dark on light as if lit evenly: each place against the paper around it, and as strong as print is there.
 * Expects print that is darker than its ground; changes the picture in place.
 */
export function evenlyLit(grey: Grey): Grey {
  const { pixels, width, height } = grey;
  const side = Math.max(smallest, Math.ceil(Math.max(width, height) / 24));
  const [across, down] = [Math.ceil(width / side), Math.ceil(height / side)];
  if (Math.max(across, down) < fewest) return grey;
  const over = (values: Float32Array): Over => ({ values, across, down, side });
  const ground = over(new Float32Array(across * down));
  const depth = over(new Float32Array(across * down));
  for (let row = 0; row < down; row++)
    for (let column = 0; column < across; column++) {
      const counts = countsIn(grey, column * side, row * side, side);
      const at = row * across + column;
      ground.values[at] = valueAt(counts, paper);
      depth.values[at] = ground.values[at]! - valueAt(counts, strokes);
    }
  const deepest = [...depth.values].sort((a, b) => a - b)[Math.floor(across * down * 0.95)]!;
  const noise = Math.min(strongest * deepest, deep * noiseOf(grey));
  const least = Math.max(plainest, faintest * deepest, noise);
  const strong = over(widened(depth).map((value) => Math.max(least, value)));
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      const below = between(ground, x, y) - pixels[at]!;
      pixels[at] = Math.round(255 * (1 - Math.min(1, Math.max(0, below / between(strong, x, y)))));
    }
  return grey;
}

function countsIn({ pixels, width, height }: Grey, left: number, top: number, side: number): Uint32Array {
  const counts = new Uint32Array(256);
  for (let y = top; y < Math.min(height, top + side); y++)
    for (let x = left; x < Math.min(width, left + side); x++) counts[pixels[y * width + x]!]!++;
  return counts;
}

function valueAt(counts: Uint32Array, share: number): number {
  let left = share * counts.reduce((sum, count) => sum + count, 0);
  for (let value = 0; value < 256; value++) {
    left -= counts[value]!;
    if (left < 0) return value;
  }
  return 255;
}

/** The most of each square and those beside it: a square with one stroke of a letter is printed as its neighbours are. */
function widened({ values, across, down }: Over): Float32Array {
  return values.map((_, at) => {
    const [x, y] = [at % across, Math.floor(at / across)];
    let most = 0;
    for (let row = Math.max(0, y - 1); row <= Math.min(down - 1, y + 1); row++)
      for (let column = Math.max(0, x - 1); column <= Math.min(across - 1, x + 1); column++)
        most = Math.max(most, values[row * across + column]!);
    return most;
  });
}

function between({ values, across, down, side }: Over, x: number, y: number): number {
  const u = Math.min(across - 1, Math.max(0, (x + 0.5) / side - 0.5));
  const v = Math.min(down - 1, Math.max(0, (y + 0.5) / side - 0.5));
  const [left, top] = [Math.floor(u), Math.floor(v)];
  const [right, bottom] = [Math.min(across - 1, left + 1), Math.min(down - 1, top + 1)];
  const [a, b] = [u - left, v - top];
  const upper = values[top * across + left]! * (1 - a) + values[top * across + right]! * a;
  const lower = values[bottom * across + left]! * (1 - a) + values[bottom * across + right]! * a;
  return upper * (1 - b) + lower * b;
}
