import { columnsOf } from '../core/picture/columns.ts';
import { noiseOf, sharpened, withoutNoise } from '../core/picture/edges.ts';
import { evenlyLit } from '../core/picture/even-light.ts';
import { printIn } from '../core/picture/find-print.ts';
import { type Grey, greyOf, levelled } from '../core/picture/grey.ts';
import type { Box } from '../core/picture/join-lines.ts';
import { type Bow, bowOf, risenBy } from '../core/picture/measure-bow.ts';
import { edgeWidth, isOnItsSide, lineHeight, slopeOf } from '../core/picture/measure-print.ts';

/** A picture made ready: `seen` as it is, straightened; `print` in the same places, dark on light. */
export type Prepared = {
  seen: HTMLCanvasElement;
  print: HTMLCanvasElement;
  lineHeight: number;
  edge: number;
  /** Where the print stands in columns. */
  columns: Box[];
};

const mostPixels = 6_000_000; // more take long and are read no better
const goodLine = 30; // pixels of a line at which print is read best
const soft = 2; // pixels of an edge: more is a blur
const rough = 6; // greys of noise: sharpened, it would cover print
const largest = 4; // times: more only blurs

/**
 * Cut to where print stands, straight, lit evenly, and print at a height that is read well; `over` turns it upside
 * down. Throws where the file is no picture.
 */
export async function prepare(file: Blob, part?: Box, over = false): Promise<Prepared> {
  const whole = part
    ? await createImageBitmap(file, part.left, part.top, part.right - part.left, part.bottom - part.top)
    : await createImageBitmap(file);
  const picture = printOf(whole, over);
  whole.close();
  const { width, height } = picture;
  const fits = Math.min(1, Math.sqrt(mostPixels / (width * height)));
  const first = greyAt(drawn(picture, { scale: fits, angle: 0 }));
  const slope = slopeOf(first);
  // Bent print has no one slope.
  const bow = bowOf(first, slope);
  const angle = bow ? 0 : slope;
  const bent = bow && { bow };
  const straight = bow || angle !== 0 ? greyAt(drawn(picture, { scale: fits, angle, ...bent })) : first;
  const line = lineHeight(straight);
  const edge = edgeWidth(straight);
  const wanted = line > 0 ? fits * Math.min(largest, Math.max(0.3, goodLine / line)) : fits;
  const scale = Math.min(wanted, Math.sqrt(mostPixels / (width * height)));
  const seen = drawn(picture, { scale, angle, ...bent });
  const even = greyAt(seen);
  const reach = Math.round((edge * scale) / fits / 2);
  const grey = edge > soft && noiseOf(even) < rough ? sharpened(even, reach) : even;
  const columns = columnsOf(grey, (line * scale) / fits);
  return { seen, print: drawnGrey(grey), columns, lineHeight: line / fits, edge: edge / fits };
}

/** As large as it is, cut to its print, lines from left to right. */
function printOf(whole: ImageBitmap, over: boolean): HTMLCanvasElement {
  const fits = Math.min(1, Math.sqrt(mostPixels / (whole.width * whole.height)));
  const seen = drawn(whole, { scale: fits, angle: 0 });
  const box = printIn(rawGrey(seen)) ?? { left: 0, top: 0, right: seen.width, bottom: seen.height };
  const [left, top] = [box.left / fits, box.top / fits];
  const [wide, high] = [box.right - box.left, box.bottom - box.top].map((side) =>
    Math.round(side / fits),
  ) as [number, number];
  const cut = canvasOf(wide, high);
  cut.getContext('2d', { willReadFrequently: true })!.drawImage(whole, -left, -top);
  const quarters = (isOnItsSide(greyAt(drawn(cut, { scale: fits, angle: 0 }))) ? 1 : 0) + (over ? 2 : 0);
  if (quarters === 0) return cut;
  const turned = quarters % 2 === 0 ? canvasOf(wide, high) : canvasOf(high, wide);
  const pen = turned.getContext('2d', { willReadFrequently: true })!;
  pen.translate(turned.width / 2, turned.height / 2);
  pen.rotate((quarters * Math.PI) / 2);
  pen.drawImage(cut, -wide / 2, -high / 2);
  return turned;
}

const canvasOf = (width: number, height: number) =>
  Object.assign(document.createElement('canvas'), { width, height });

type How = { scale: number; angle: number; bow?: Bow };

type Source = ImageBitmap | HTMLCanvasElement;

const drawn = (picture: Source, { bow, ...how }: How) =>
  bow ? unbowed(turnedBack(picture, how), bow) : turnedBack(picture, how);

/** Each column moved so far up that lines of print run straight across a bottle's curve. */
function unbowed(from: HTMLCanvasElement, bow: Bow): HTMLCanvasElement {
  const { width, height } = from;
  const canvas = canvasOf(width, height);
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  pen.drawImage(from, 0, 0);
  for (let x = 0; x < width; x++) pen.drawImage(from, x, 0, 1, height, x, -risenBy(bow, x, width), 1, height);
  return canvas;
}

function turnedBack(picture: Source, { scale, angle }: Omit<How, 'bow'>) {
  const [wide, high] = [picture.width, picture.height].map((side) => Math.max(1, Math.round(side * scale)));
  const canvas = canvasOf(wide!, high!);
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  if (angle === 0) return canvas;
  const corner = pen.getImageData(0, 0, 1, 1).data;
  pen.fillStyle = `rgb(${corner[0]} ${corner[1]} ${corner[2]})`;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.translate(canvas.width / 2, canvas.height / 2);
  pen.rotate((-angle * Math.PI) / 180);
  pen.drawImage(picture, -canvas.width / 2, -canvas.height / 2, canvas.width, canvas.height);
  return canvas;
}

function rawGrey(canvas: HTMLCanvasElement): Grey {
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  return withoutNoise(greyOf(data, canvas.width, canvas.height));
}

const greyAt = (canvas: HTMLCanvasElement): Grey => evenlyLit(levelled(rawGrey(canvas)));

function drawnGrey({ pixels, width, height }: Grey): HTMLCanvasElement {
  const canvas = canvasOf(width, height);
  const pen = canvas.getContext('2d')!;
  const image = pen.createImageData(width, height);
  for (let i = 0, at = 0; i < pixels.length; i++, at += 4) {
    image.data[at] = image.data[at + 1] = image.data[at + 2] = pixels[i]!;
    image.data[at + 3] = 255;
  }
  pen.putImageData(image, 0, 0);
  return canvas;
}
