/** Where a glyph may stand by its name so that it covers no letter. Pure geometry, in CSS pixels. */

export type Spot = {
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

export type Box = { x: number; y: number; width: number; height: number };

const air = 0.75; // between ink and glyph
const least = { flat: 3, tall: 5.5, small: 2.2 }; // heights below which a shape can no longer be told

/**
 * The box for a name's glyph, or none where it could only stand on letters: in the gap above the name's end,
 * or, where lines stand too close for that, raised after the name, above its comma.
 * @param shape width and height of the glyph at full size
 */
export function placeGlyph(spot: Spot, shape: { width: number; height: number }): Box | undefined {
  const tall = shape.height > shape.width;
  return (
    inGap(spot, shape, tall ? least.tall : least.flat) ?? raised(spot, shape, tall ? least.tall : least.small)
  );
}

type Shape = { width: number; height: number };

function inGap(spot: Spot, shape: Shape, leastHeight: number): Box | undefined {
  const scale = Math.min(1, (spot.gap - 2 * air) / shape.height);
  const [width, height] = [shape.width * scale, shape.height * scale];
  if (height < leastHeight || width > spot.width + spot.room) return undefined;
  const over = Math.min(spot.room, width / 2);
  const x = spot.forward === 1 ? spot.end + over - width : spot.end - over;
  return { x, y: spot.baseline - spot.ink - air - height, width, height };
}

function raised(spot: Spot, shape: Shape, leastHeight: number): Box | undefined {
  const high = spot.ink + spot.gap - spot.foot - air;
  const scale = Math.min(1, high / shape.height, (spot.room - 2 * air) / shape.width);
  const [width, height] = [shape.width * scale, shape.height * scale];
  if (height < leastHeight) return undefined;
  const x = spot.forward === 1 ? spot.end + air : spot.end - air - width;
  return { x, y: spot.baseline - spot.foot - height, width, height };
}
