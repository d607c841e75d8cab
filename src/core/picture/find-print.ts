import type { Grey } from './grey.ts';
import type { Box } from './join-lines.ts';

const widest = 1000; // pixels of the longer side are enough to see where print stands
const cell = 8; // of those pixels
const busy = 0.25; // of what the busiest cells hold more than the quietest: less is paper, tiles or noise
const reach = 3; // cells from a word to the next, or from a line to the next
const least = 0.04; // of all print: what is less and far from the rest is a sign or a speck
const margin = 3; // cells around it
const most = 0.7; // of the picture: where print fills more, all of it is read

/** Where print stands in a picture, in its pixels; undefined where it fills it, or none is seen. */
export function printIn(grey: Grey): Box | undefined {
  const n = Math.max(1, Math.ceil(Math.max(grey.width, grey.height) / widest));
  const picture = averaged(grey, n);
  const [across, down] = [Math.floor(picture.width / cell), Math.floor(picture.height / cell)];
  const print = busyness(picture, across, down);
  const inOrder = [...print].sort((a, b) => a - b);
  const [low, high] = [0.2, 0.985].map((share) => inOrder[Math.floor(print.length * share)] ?? 0) as [
    number,
    number,
  ];
  if (high === low) return undefined;
  const enough = low + busy * (high - low);
  const groups = groupsOf(
    print.map((value) => (value > enough ? value - low : 0)),
    across,
    down,
  );
  const all = groups.reduce((sum, { weight }) => sum + weight, 0);
  const taken = groups.filter(({ weight }) => weight >= least * all);
  if (taken.length === 0) return undefined;
  const size = cell * n;
  const [left, top] = [
    Math.min(...taken.map(({ box }) => box.left)),
    Math.min(...taken.map(({ box }) => box.top)),
  ];
  const box = {
    left: Math.max(0, (left - margin) * size),
    top: Math.max(0, (top - margin) * size),
    right: Math.min(grey.width, (Math.max(...taken.map((each) => each.box.right)) + 1 + margin) * size),
    bottom: Math.min(grey.height, (Math.max(...taken.map((each) => each.box.bottom)) + 1 + margin) * size),
  };
  const share = ((box.right - box.left) * (box.bottom - box.top)) / (grey.width * grey.height);
  return share < most ? box : undefined;
}

function averaged({ pixels, width, height }: Grey, n: number): Grey {
  const [w, h] = [Math.floor(width / n), Math.floor(height / n)];
  const sums = new Float32Array(w * h);
  for (let y = 0; y < h * n; y++)
    for (let x = 0; x < w * n; x++)
      sums[Math.floor(y / n) * w + Math.floor(x / n)]! += pixels[y * width + x]!;
  return { pixels: Uint8Array.from(sums, (sum) => sum / (n * n)), width: w, height: h };
}

/** How much greys change in each cell, both along and across: edges of tiles and bars change one way only. */
function busyness({ pixels, width }: Grey, across: number, down: number): Float32Array {
  return Float32Array.from({ length: across * down }, (_, at) => {
    const [left, top] = [(at % across) * cell, Math.floor(at / across) * cell];
    let [along, downwards] = [0, 0];
    for (let y = top; y < top + cell - 1; y++)
      for (let x = left; x < left + cell - 1; x++) {
        const here = pixels[y * width + x]!;
        along += Math.abs(here - pixels[y * width + x + 1]!);
        downwards += Math.abs(here - pixels[(y + 1) * width + x]!);
      }
    return Math.min(along, downwards);
  });
}

type Group = { weight: number; box: Box };

/** Cells with print that are near each other, together. */
function groupsOf(print: Float32Array, across: number, down: number): Group[] {
  const seen = new Uint8Array(print.length);
  const groups: Group[] = [];
  for (let start = 0; start < print.length; start++) {
    if (print[start] === 0 || seen[start]) continue;
    const group = { weight: 0, box: { left: across, top: down, right: 0, bottom: 0 } };
    const open = [start];
    seen[start] = 1;
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      const [x, y] = [at % across, Math.floor(at / across)];
      group.weight += print[at]!;
      group.box = {
        left: Math.min(group.box.left, x),
        top: Math.min(group.box.top, y),
        right: Math.max(group.box.right, x),
        bottom: Math.max(group.box.bottom, y),
      };
      for (let row = Math.max(0, y - reach); row <= Math.min(down - 1, y + reach); row++)
        for (let column = Math.max(0, x - reach); column <= Math.min(across - 1, x + reach); column++) {
          const next = row * across + column;
          if (print[next] === 0 || seen[next]) continue;
          seen[next] = 1;
          open.push(next);
        }
    }
    groups.push(group);
  }
  return groups;
}
