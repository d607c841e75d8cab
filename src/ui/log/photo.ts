const longestSide = 1024;
const quality = 0.8;

/** A photo as a small JPEG data URL, drawn anew: neither its size nor what the camera wrote into it is kept. */
export async function smallPhoto(file: Blob): Promise<string> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, longestSide / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return canvas.toDataURL('image/jpeg', quality);
}
