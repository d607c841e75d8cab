import type { Grey } from './grey.ts';

/** Of a levelled picture, 0 to 255: darker is print. */
export const ink = 128;
const steepest = 10; // degrees a hand holds a bottle or a camera askew
const widest = 700; // pixels are enough to see which way lines run

/** Every nth pixel in both directions: the darkest of each square, so that thin print is not lost. */
export function smaller({ pixels, width, height }: Grey, n: number): Grey {
  const [w, h] = [Math.floor(width / n), Math.floor(height / n)];
  const out = new Uint8Array(w * h).fill(255);
  for (let y = 0; y < h * n; y++)
    for (let x = 0; x < w * n; x++) {
      const at = Math.floor(y / n) * w + Math.floor(x / n);
      const value = pixels[y * width + x]!;
      if (value < out[at]!) out[at] = value;
    }
  return { pixels: out, width: w, height: h };
}

/** How much rows of print and rows between them differ when each column is moved up by this many pixels. */
export function stripes({ pixels, width, height }: Grey, upBy: (x: number) => number, apart = 1): number {
  const up = Int32Array.from({ length: width }, (_, x) => Math.round(upBy(x)));
  const most = up.reduce((max, each) => Math.max(max, Math.abs(each)), 0);
  const rows = new Float64Array(height + 2 * most + 2);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) if (pixels[y * width + x]! < ink) rows[y - up[x]! + most]!++;
  // Rows one by one, or as many together: what is finer than lines then counts for nothing.
  const until = new Float64Array(rows.length + 1);
  for (let i = 0; i < rows.length; i++) until[i + 1] = until[i]! + rows[i]!;
  let sum = 0;
  for (let i = apart; i + apart < until.length; i++)
    sum += (until[i + apart]! - 2 * until[i]! + until[i - apart]!) ** 2;
  return sum;
}

/** From the first to the last column with print; specks do not count. */
export function inkColumns({ pixels, width, height }: Grey): { from: number; to: number } | undefined {
  const counts = new Uint32Array(width);
  for (let at = 0; at < pixels.length; at++) if (pixels[at]! < ink) counts[at % width]!++;
  const printed = (count: number) => count > height / 100;
  const from = counts.findIndex(printed);
  return from < 0 ? undefined : { from, to: counts.findLastIndex(printed) };
}

/** Rows as columns. */
const onItsSide = ({ pixels, width, height }: Grey): Grey => {
  const out = new Uint8Array(pixels.length);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++) out[x * height + y] = pixels[at++]!;
  return { pixels: out, width: height, height: width };
};

const together = 5; // rows: more than a letter is wide, fewer than lines are apart
const parts = 3; // across: lines that are bent run nearly straight in each
const surely = 1.3; // times as clear: what is not stays as it is held

/** Whether lines of print run from top to bottom: the picture is a quarter turn off. Expects a levelled picture. */
export function isOnItsSide(grey: Grey): boolean {
  const picture = smaller(grey, Math.max(1, Math.round(Math.max(grey.width, grey.height) / widest)));
  return clearness(onItsSide(picture)) > surely * clearness(picture);
}

/** How clearly print stands in lines, at whatever slope, in the middle one of the parts; the picture's rim left out. */
function clearness(picture: Grey): number {
  const [x, y] = [Math.floor(picture.width / 10), Math.floor(picture.height / 10)];
  const wide = Math.floor((picture.width - 2 * x) / parts);
  const clear = Array.from({ length: parts }, (_, part) => {
    const own = cut(picture, x + part * wide, y, wide, picture.height - 2 * y);
    const print = own.pixels.reduce((sum, pixel) => sum + (pixel < ink ? 1 : 0), 0);
    const sums = Array.from({ length: 2 * steepest + 1 }, (_, n) =>
      sheared(own, slopeAt(n - steepest), together),
    );
    return (Math.max(...sums) * own.height) / Math.max(1, print) ** 2;
  });
  return clear.sort((a, b) => a - b)[1]!;
}

function cut({ pixels, width }: Grey, left: number, top: number, wide: number, high: number): Grey {
  const out = new Uint8Array(wide * high);
  for (let y = 0; y < high; y++)
    out.set(pixels.subarray((top + y) * width + left, (top + y) * width + left + wide), y * wide);
  return { pixels: out, width: wide, height: high };
}

const slopeAt = (angle: number) => Math.tan((angle * Math.PI) / 180);

const sheared = (picture: Grey, slope: number, together?: number) =>
  stripes(picture, (x) => x * slope, together);

/** The angle at which lines of print run, in degrees, downwards to the right above zero. Expects a levelled picture. */
export function slopeOf(grey: Grey): number {
  const picture = smaller(grey, Math.max(1, Math.round(grey.width / widest)));
  const best = (angles: number[]) =>
    angles
      .map((angle) => ({ angle, sum: sheared(picture, slopeAt(angle)) }))
      .reduce((most, each) => (each.sum > most.sum ? each : most)).angle;
  const around = (middle: number, step: number, reach: number) => {
    const n = Math.round(reach / step);
    // Straight first: of equals the first is taken.
    return [middle, ...Array.from({ length: 2 * n + 1 }, (_, i) => middle + (i - n) * step)];
  };
  return best(around(best(around(0, 1, steepest)), 0.25, 0.75));
}

/** Height of lines of print in pixels, from the top of small letters to below; 0 where no lines are seen. */
export function lineHeight({ pixels, width, height }: Grey): number {
  const strips = 6;
  const runs: number[] = [];
  for (let strip = 0; strip < strips; strip++) {
    const [left, right] = [Math.floor((strip * width) / strips), Math.floor(((strip + 1) * width) / strips)];
    const rows = new Float64Array(height);
    for (let y = 0; y < height; y++)
      for (let x = left; x < right; x++) if (pixels[y * width + x]! < ink) rows[y]!++;
    const filled = [...rows].filter((count) => count > 0).sort((a, b) => a - b);
    const line = (filled[Math.floor(filled.length * 0.8)] ?? 0) * 0.3;
    let run = 0;
    for (const count of [...rows, 0])
      if (line > 0 && count > line) run++;
      else {
        if (run > 2) runs.push(run);
        run = 0;
      }
  }
  runs.sort((a, b) => a - b);
  return runs[Math.floor(runs.length / 2)] ?? 0;
}

/** How many pixels an edge of print takes, against the height of its lines: sharp print has edges of a pixel or two. */
export function edgeWidth({ pixels, width, height }: Grey): number {
  const steps = new Uint32Array(256);
  let edges = 0;
  for (let y = 0; y < height; y++)
    for (let x = 1; x < width; x++) {
      const step = Math.abs(pixels[y * width + x]! - pixels[y * width + x - 1]!);
      if (step > 12) {
        steps[step]!++;
        edges++;
      }
    }
  let left = edges * 0.05;
  for (let step = 255; step > 0; step--) {
    left -= steps[step]!;
    if (left <= 0) return 255 / step;
  }
  return Number.POSITIVE_INFINITY;
}
