import type { Grey } from './grey.ts';
import { inkColumns, smaller, stripes } from './measure-print.ts';

/** How print bends across a round bottle, as shares of the picture's width: where it turns, how far its ends sink, and how far the right one more than the left. */
export type Bow = { middle: number; half: number; sag: number; tilt: number };

const deepest = 0.12; // of half the print's width: rounder print is too narrow at its ends to be read
const widest = 500; // pixels are enough to see it
const surely = 1.2; // times as clear as straight lines: what is straight stays as it is
const turns = 2; // of looking for the one with the other held

/** How far below the middle print stands at a column, in pixels of a picture this wide. */
export function risenBy({ middle, half, sag, tilt }: Bow, x: number, width: number): number {
  const u = (x / width - middle) / half;
  return width * (sag * u * u + tilt * u);
}

/** The bow of lines of print, or nothing where they run straight, turned by `angle` degrees or not. Expects a levelled picture. */
export function bowOf(grey: Grey, angle = 0): Bow | undefined {
  const picture = smaller(grey, Math.max(1, Math.round(grey.width / widest)));
  const { width } = picture;
  const columns = inkColumns(picture);
  if (!columns || columns.to - columns.from < width / 8) return undefined;
  const place = {
    middle: (columns.to + columns.from) / 2 / width,
    half: (columns.to - columns.from) / 2 / width,
  };
  const clear = (sag: number, tilt: number) =>
    stripes(picture, (x) => risenBy({ ...place, sag, tilt }, x, width));
  const step = 2 / width;
  const steps = Math.ceil((deepest * place.half) / step);
  const turned = Math.tan((angle * Math.PI) / 180) * place.half;
  const flat = clear(0, turned);
  let best = { sag: 0, tilt: 0, sum: 0 };
  const take = (sag: number, tilt: number) => {
    const sum = clear(sag, tilt);
    if (sum > best.sum) best = { sag, tilt, sum };
  };
  for (const tilt of new Set([0, turned])) for (let n = -steps; n <= steps; n++) take(n * step, tilt);
  for (let turn = 0; turn < turns; turn++) {
    const { sag, tilt } = best;
    for (let n = -6; n <= 6; n++) take(sag, tilt + (n * step) / 2);
    for (let n = -6; n <= 6; n++) take(sag + (n * step) / 2, best.tilt);
  }
  const { sag, tilt } = best;
  return best.sum > surely * flat && Math.abs(sag) > step ? { ...place, sag, tilt } : undefined;
}
