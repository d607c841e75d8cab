import type { Grey } from './grey.ts';

const quiet = 12; // greys from a pixel to the next: more is noise

/** Greys from a pixel to the next, in the middle one of all pairs: paper has none, a camera in the dark has many. */
export function noiseOf({ pixels }: Grey): number {
  const steps = new Uint32Array(256);
  for (let at = 1; at < pixels.length; at++) steps[Math.abs(pixels[at]! - pixels[at - 1]!)]!++;
  let left = pixels.length / 2;
  return steps.findIndex((count) => {
    left -= count;
    return left < 0;
  });
}

/** Each pixel as the mean of those beside it, where most differ at random; else as it is. */
export const withoutNoise = (grey: Grey): Grey =>
  noiseOf(grey) > quiet ? { ...grey, pixels: Uint8Array.from(meansAround(grey, 1)) } : grey;

const meansAround = ({ pixels, width, height }: Grey, reach: number) =>
  // Each pass lays rows as columns: two have them as they were.
  meansAlong(meansAlong(pixels, width, height, reach), height, width, reach);

const times = 3; // of the difference: more draws rims around letters

/**
 * What differs from around it differs more: edges that took many pixels take fewer. A new picture.
 * @param reach pixels to each side that count as around
 */
export function sharpened(grey: Grey, reach: number): Grey {
  const around = meansAround(grey, reach);
  const pixels = grey.pixels.map((pixel, at) =>
    Math.round(Math.min(255, Math.max(0, pixel + times * (pixel - around[at]!)))),
  );
  return { ...grey, pixels };
}

/** Each pixel as the mean of those beside it in its row, rows laid as columns. */
function meansAlong(from: ArrayLike<number>, width: number, height: number, reach: number): Float32Array {
  const out = new Float32Array(width * height);
  const sums = new Float64Array(width + 1);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) sums[x + 1] = sums[x]! + from[y * width + x]!;
    for (let x = 0; x < width; x++) {
      const [left, right] = [Math.max(0, x - reach), Math.min(width, x + reach + 1)];
      out[x * height + y] = (sums[right]! - sums[left]!) / (right - left);
    }
  }
  return out;
}
