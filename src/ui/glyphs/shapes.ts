/**
 * Our own glyphs as plain path data: protein is a row of linked beads, moisture a drop with what it does cut
 * into it, a mended name two ends sewn together, the answers are two rings: linked, linked with one left
 * open, broken apart, or one of them in doubt. Shape says it all; hue only
 * repeats it.
 */
import type { GlyphName } from '../../contract/paint-order.ts';
import type { Answer } from '../../core/judge/finding.ts';

/** `line` and `fill` take the hue, `cut` the ground the glyph stands on. */
export type GlyphPart = { as: 'line' | 'fill' | 'cut'; d: string; width?: number; dash?: string };
/** Box in units that are pixels at reading size. */
export type GlyphShape = {
  width: number;
  height: number;
  hue: 'plum' | 'teal' | 'ink' | 'ochre';
  shapes: GlyphPart[];
};

const tenth = (n: number) => Math.round(n * 10) / 10;
/** Hollow beads. */
const rings = (r: number, ...at: [number, number][]) =>
  at
    .map(([x, y]) => `M${tenth(x - r)} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`)
    .join('');
/** Full beads: lines of no length with round ends. */
const beads = (r: number, ...at: [number, number][]): GlyphPart => ({
  as: 'line',
  d: at.map(([x, y]) => `M${x} ${y}z`).join(''),
  width: 2 * r,
});
const drop = 'M6 .6C3.9 4.2 1 6.6 1 9.6a5 5 0 0 0 10 0C11 6.6 8.1 4.2 6 .6Z';
const coil: [number, number][] = [
  [2.1, 6.7],
  [6.2, 3.4],
  [10.7, 2.1],
  [14.6, 4.6],
  [18.6, 7],
  [23.1, 5.6],
  [26.9, 2.2],
];

export const glyphs: Record<GlyphName, GlyphShape> = {
  free: { width: 8, height: 8, hue: 'plum', shapes: [beads(3.2, [4, 4])] },
  small: {
    width: 22,
    height: 7,
    hue: 'plum',
    shapes: [{ as: 'line', d: 'M3 3.5H19', width: 1.3 }, beads(2.8, [3.2, 3.5], [11, 3.5], [18.8, 3.5])],
  },
  large: {
    width: 29,
    height: 9.1,
    hue: 'plum',
    shapes: [
      { as: 'line', d: `M${coil.map((at) => at.join(' ')).join('L')}`, width: 1.3 },
      beads(2.05, ...coil),
    ],
  },
  bearing: {
    width: 22,
    height: 7,
    hue: 'plum',
    shapes: [
      { as: 'line', d: 'M5.8 3.5H8.4M13.6 3.5H16.2', width: 1.1 },
      { as: 'line', d: rings(2.5, [3.2, 3.5], [11, 3.5], [18.8, 3.5]), width: 1.3 },
    ],
  },
  draws: {
    width: 12,
    height: 15,
    hue: 'teal',
    shapes: [
      { as: 'fill', d: drop },
      { as: 'cut', d: 'M6 5.2V11.8M3.5 9.4 6 11.9 8.5 9.4', width: 1.5 },
    ],
  },
  softens: {
    width: 12,
    height: 15,
    hue: 'teal',
    shapes: [
      { as: 'fill', d: drop },
      { as: 'cut', d: 'M1.8 9.8C3 7.8 4.6 7.8 6 9.6S9 11.4 10.2 9.4', width: 1.6 },
    ],
  },
  seals: {
    width: 12,
    height: 15,
    hue: 'teal',
    shapes: [
      { as: 'fill', d: drop },
      { as: 'cut', d: 'M0 7.6H12', width: 1.9 },
    ],
  },
  mended: {
    width: 14,
    height: 8,
    hue: 'ink',
    shapes: [
      { as: 'line', d: 'M.8 4H5M9 4H13.2', width: 1.2 },
      { as: 'line', d: 'M5.4 1 8.6 7M8.6 1 5.4 7', width: 1.2 },
    ],
  },
  suits: {
    width: 17,
    height: 11,
    hue: 'ink',
    shapes: [{ as: 'line', d: rings(4.4, [5.2, 5.5], [11.8, 5.5]), width: 1.5 }],
  },
  'with-care': {
    width: 17,
    height: 11,
    hue: 'ochre',
    shapes: [
      { as: 'line', d: rings(4.4, [5.2, 5.5]), width: 1.5 },
      { as: 'line', d: 'M14.9 2.4A4.4 4.4 0 1 0 14.9 8.6', width: 1.5 },
    ],
  },
  'does-not-suit': {
    width: 17,
    height: 11,
    hue: 'ochre',
    shapes: [{ as: 'line', d: 'M6.6 2.9A3.4 3.4 0 1 0 6.6 8.1M10.4 2.9A3.4 3.4 0 1 1 10.4 8.1', width: 1.6 }],
  },
  unsure: {
    width: 17,
    height: 11,
    hue: 'ink',
    shapes: [
      { as: 'line', d: rings(4.4, [5.2, 5.5]), width: 1.5 },
      { as: 'line', d: rings(4.4, [11.8, 5.5]), width: 1.4, dash: '1.4 2' },
    ],
  },
};

export const glyphOfAnswer = (answer: Answer): GlyphName => (answer === 'cannot-tell' ? 'unsure' : answer);
