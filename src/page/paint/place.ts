/** Where a glyph may stand by its name so that it covers no letter. Pure geometry, in CSS pixels. */

export type Spot = {
  /** End of the name on its line, on the side reading goes to; +1 where text runs to the right, −1 to the left. */
  end: number;
  forward: 1 | -1;
  baseline: number;
  /** Height of the ink above the baseline at the name's end; blank height between it and the line above. */
  ink: number;
  gap: number;
  /** Blank width after the name (above its comma), and the height of what stands there (the comma). */
  room: number;
  comma: number;
  /** Width of the name's last line: a glyph above it is never wider. */
  width: number;
};

export type Box = { x: number; y: number; width: number; height: number };

const air = 1; // between ink and glyph
const least = { flat: 3.2, tall: 5.5 }; // heights below which a shape can no longer be told

/**
 * Boxes for the glyphs of one name, or none where they could only stand on letters. Flat glyphs (rows of
 * beads) hang in the gap above the name's end; tall ones (drops) stand over the comma after it.
 * @param shapes width and height of each glyph, at full size
 */
export function placeGlyphs(spot: Spot, shapes: { width: number; height: number }[]): Box[] | undefined {
  const tall = shapes.every(({ width, height }) => height > width);
  return (tall ? overComma(spot, shapes) : undefined) ?? inGap(spot, shapes) ?? overComma(spot, shapes);
}

function row(shapes: { width: number; height: number }[], height: number) {
  const most = Math.max(...shapes.map((shape) => shape.height));
  const scale = Math.min(1, height / most);
  const width = shapes.reduce((sum, shape) => sum + shape.width * scale, 0) + (shapes.length - 1) * air * 1.5;
  return { scale, width, height: most * scale };
}

/** Lays the boxes out along the reading direction, their feet on `bottom`. */
function lay(
  shapes: { width: number; height: number }[],
  scale: number,
  left: number,
  bottom: number,
): Box[] {
  let x = left;
  return shapes.map((shape) => {
    const box = {
      x,
      y: bottom - shape.height * scale,
      width: shape.width * scale,
      height: shape.height * scale,
    };
    x += box.width + air * 1.5;
    return box;
  });
}

function inGap(spot: Spot, shapes: { width: number; height: number }[]): Box[] | undefined {
  const { scale, width, height } = row(shapes, spot.gap - 2 * air);
  if (
    height < least.flat ||
    (height < Math.max(...shapes.map((shape) => shape.height)) && height < least.flat)
  )
    return undefined;
  if (width > spot.width + spot.room) return undefined;
  const over = Math.min(spot.room, width / 2);
  const left = spot.forward === 1 ? spot.end + over - width : spot.end - over;
  return lay(shapes, scale, left, spot.baseline - spot.ink - air);
}

function overComma(spot: Spot, shapes: { width: number; height: number }[]): Box[] | undefined {
  const height = spot.ink + spot.gap - spot.comma - 2 * air;
  let { scale, width } = row(shapes, height);
  if (width > spot.room - air) {
    scale *= (spot.room - air) / width;
    width = spot.room - air;
  }
  const most = Math.max(...shapes.map((shape) => shape.height)) * scale;
  if (scale <= 0 || most < (shapes.every((shape) => shape.height > shape.width) ? least.tall : 2.2))
    return undefined;
  const left = spot.forward === 1 ? spot.end + air / 2 : spot.end - air / 2 - width;
  return lay(shapes, scale, left, spot.baseline - spot.comma - air);
}
