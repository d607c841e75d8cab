import { columnsOf } from '../core/picture/columns.ts';
import { type Grey, greyOf, levelled } from '../core/picture/grey.ts';
import type { Box } from '../core/picture/join-lines.ts';
import { type Bow, bowOf, risenBy } from '../core/picture/measure-bow.ts';
import { edgeWidth, lineHeight, slopeOf } from '../core/picture/measure-print.ts';

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
const largest = 4; // times: more only blurs

/** Straight, and print at a height that is read well. Throws where the file is no picture. */
export async function prepare(file: Blob, part?: Box): Promise<Prepared> {
  const picture = part
    ? await createImageBitmap(file, part.left, part.top, part.right - part.left, part.bottom - part.top)
    : await createImageBitmap(file);
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
  picture.close();
  const grey = greyAt(seen);
  const columns = columnsOf(grey, (line * scale) / fits);
  return { seen, print: drawnGrey(grey), columns, lineHeight: line / fits, edge: edge / fits };
}

type How = { scale: number; angle: number; bow?: Bow };

const drawn = (picture: ImageBitmap, { bow, ...how }: How) =>
  bow ? unbowed(turnedBack(picture, how), bow) : turnedBack(picture, how);

/** Each column moved so far up that lines of print run straight across a bottle's curve. */
function unbowed(from: HTMLCanvasElement, bow: Bow): HTMLCanvasElement {
  const { width, height } = from;
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width, height];
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  pen.drawImage(from, 0, 0);
  for (let x = 0; x < width; x++) pen.drawImage(from, x, 0, 1, height, x, -risenBy(bow, x, width), 1, height);
  return canvas;
}

function turnedBack(picture: ImageBitmap, { scale, angle }: Omit<How, 'bow'>) {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
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

function greyAt(canvas: HTMLCanvasElement): Grey {
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  return levelled(greyOf(data, canvas.width, canvas.height));
}

function drawnGrey({ pixels, width, height }: Grey): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width, height];
  const pen = canvas.getContext('2d')!;
  const image = pen.createImageData(width, height);
  for (let i = 0, at = 0; i < pixels.length; i++, at += 4) {
    image.data[at] = image.data[at + 1] = image.data[at + 2] = pixels[i]!;
    image.data[at + 3] = 255;
  }
  pen.putImageData(image, 0, 0);
  return canvas;
}
