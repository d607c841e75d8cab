/** Where a glyph may stand by its name so that it covers no letter. Pure geometry, in CSS pixels. */

export type NameSpot = {
  /** End of the name on its last line, on the side reading goes to; `forward` is −1 where that is the left. */
  end: number;
  forward: 1 | -1;
  baseline: number;
  /** Height of the ink above the baseline at the name's end, and of the blank between it and the line above. */
  ink: number;
  gap: number;
  /** Blank width after the name, above its comma; and the height below which a raised glyph would touch the comma. */
  room: number;
  foot: number;
  /** Width of the name's last line: a glyph that hangs over its end is no wider. */
  width: number;
};

export type PageBox = { x: number; y: number; width: number; height: number };

const air = 0.75; // between ink and glyph
// Heights below which a shape can no longer be told.
const leastTall = 5.5;
const leastFlat = 3;
const leastRaised = 2.2;

/**
 * The box for a name's glyph, or none where it could only stand on letters: in the gap above the name's end,
 * or, where lines stand too close for that, raised after the name, above its comma.
 * @param shape width and height of the glyph at full size
 */
export function placeGlyph(
  { end, forward, baseline, ink, gap, room, foot, width: name }: NameSpot,
  shape: { width: number; height: number },
): PageBox | undefined {
  /** A box at most so high and wide whose foot is at `y`, and whose start is so far after the name's end. */
  const box = (
    high: number,
    wide: number,
    leastHigh: number,
    y: number,
    after: (width: number) => number,
  ) => {
    const scale = Math.min(1, high / shape.height, wide / shape.width);
    const [width, height] = [shape.width * scale, shape.height * scale];
    const start = after(width);
    const x = forward === 1 ? end + start : end - start - width;
    return height < leastHigh ? undefined : { x, y: y - height, width, height };
  };
  const tall = shape.height > shape.width && leastTall;
  return (
    box(
      gap - 2 * air,
      name + room,
      tall || leastFlat,
      baseline - ink - air,
      (width) => Math.min(room, width / 2) - width,
    ) ?? box(ink + gap - foot - air, room - 2 * air, tall || leastRaised, baseline - foot, () => air)
  );
}
