/** A picture in grey, one byte a pixel. */
export type Grey = { pixels: Uint8Array; width: number; height: number };

/** Colours (four bytes a pixel) as the eye weighs them. */
export function greyOf(rgba: ArrayLike<number>, width: number, height: number): Grey {
  const pixels = new Uint8Array(width * height);
  for (let i = 0, at = 0; i < pixels.length; i++, at += 4)
    pixels[i] = (rgba[at]! * 77 + rgba[at + 1]! * 151 + rgba[at + 2]! * 28) >> 8;
  return { pixels, width, height };
}

/** Grey value below which this share of the pixels lies. */
function levels(pixels: Uint8Array, shares: readonly number[]): number[] {
  const counts = new Uint32Array(256);
  for (const pixel of pixels) counts[pixel]!++;
  return shares.map((share) => {
    let left = share * pixels.length;
    for (let value = 0; value < 256; value++) {
      left -= counts[value]!;
      if (left < 0) return value;
    }
    return 255;
  });
}

const ends = [0.005, 0.5, 0.995]; // specks of dust and of gloss do not set the range

/** Dark print on a light ground, over the whole range of greys, whatever it was before. Changes the picture in place. */
export function levelled(grey: Grey): Grey {
  const [dark, middle, light] = levels(grey.pixels, ends) as [number, number, number];
  const inverted = middle - dark > light - middle ? false : light > middle;
  const [from, to] = inverted ? [light, dark] : [dark, light];
  const table = Uint8Array.from({ length: 256 }, (_, value) =>
    Math.round(255 * Math.min(1, Math.max(0, to === from ? 1 : (value - from) / (to - from)))),
  );
  for (let i = 0; i < grey.pixels.length; i++) grey.pixels[i] = table[grey.pixels[i]!]!;
  return grey;
}
