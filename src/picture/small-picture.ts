import type { Box } from '../core/picture/join-lines.ts';
import { fileOfDataUrl } from './data-url.ts';

const ways = [
  ['image/webp', 0.8],
  ['image/webp', 0.6],
  ['image/jpeg', 0.6],
  ['image/webp', 0.35],
  ['image/jpeg', 0.3],
  ['image/webp', 0.1],
] as const;

/**
 * A picture drawn on white, small, as a data URL; undefined where it cannot be made short enough.
 * @param data the picture as a data URL
 * @param side pixels of its longer side, at most
 * @param most letters of the data URL, at most
 * @param boxIn the part to draw of a picture so many pixels wide; all of it where there is none
 */
export async function smallPictureOf(
  data: string,
  side: number,
  most: number,
  boxIn: (width: number) => Box | undefined = () => undefined,
): Promise<string | undefined> {
  const picture = await createImageBitmap(fileOfDataUrl(data));
  const all = { left: 0, top: 0, right: picture.width, bottom: picture.height };
  const { left, top, right, bottom } = boxIn(picture.width) ?? all;
  const [width, height] = [right - left, bottom - top];
  const scale = Math.min(1, side / Math.max(width, height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(width * scale)),
    Math.max(1, Math.round(height * scale)),
  );
  const pen = canvas.getContext('2d')!;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, left, top, width, height, 0, 0, canvas.width, canvas.height);
  picture.close();
  for (const [type, quality] of ways) {
    const file = await canvas.convertToBlob({ type, quality });
    const small = await urlOf(file);
    // A browser that cannot write a type writes PNG.
    if (small.length <= most) return small;
  }
  return undefined;
}

async function urlOf(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return `data:${file.type};base64,${btoa(String.fromCharCode(...bytes))}`;
}
