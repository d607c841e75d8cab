import type { Box } from '../../core/picture/join-lines.ts';

/** Pixels of a picture as a data URL, or where it stands in a view that is `width` wide. */
export type Seen = { pixels: string } | { box: Box; width: number };

/**
 * Sent alone into the page: the product's picture, drawn small from what is loaded already. The one the page names,
 * else the largest that leads nowhere else. It changes nothing there.
 */
export async function seenPicture(said: string | null, side: number): Promise<Seen | null> {
  const narrowest = 48;
  const fileOf = (address: string) => address.split(/[?#]/)[0]!.split('/').pop();
  const leadsAway = (image: HTMLImageElement) => {
    const to = image.closest<HTMLAnchorElement>('a[href]')?.href.split('#')[0];
    const isPicture = /\.(?:jpe?g|png|webp|avif|gif|svg)(?:\?|$)/i;
    return to !== undefined && to !== location.href.split('#')[0] && !isPicture.test(to);
  };
  const ask = Document.prototype.querySelectorAll;
  const images = ([...ask.call(document, 'img')] as HTMLImageElement[])
    .filter((image) => image.complete && image.naturalWidth >= narrowest && image.checkVisibility())
    .map((image) => ({ image, at: image.getBoundingClientRect() }))
    .filter(({ at }) => at.width >= narrowest && at.height >= narrowest);
  const named = said
    ? (images.find(({ image }) => image.currentSrc === said) ??
      images.find(({ image }) => fileOf(image.currentSrc) === fileOf(said)))
    : undefined;
  const largest = () =>
    images
      .filter(({ image }) => !leadsAway(image) && !image.closest('header, nav, footer, aside'))
      .sort((a, b) => b.at.width * b.at.height - a.at.width * a.at.height)[0];
  const chosen = named ?? largest();
  if (!chosen) return null;
  const { image, at } = chosen;
  const scale = Math.min(1, side / Math.max(image.naturalWidth, image.naturalHeight));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(image.naturalWidth * scale)),
    Math.max(1, Math.round(image.naturalHeight * scale)),
  );
  const pen = canvas.getContext('2d')!;
  pen.imageSmoothingQuality = 'high';
  try {
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    const file = await canvas.convertToBlob({ type: 'image/png' });
    const reader = new FileReader();
    return await new Promise((done) => {
      reader.onload = () => done({ pixels: String(reader.result) });
      reader.readAsDataURL(file);
    });
  } catch {
    // Another site's pixels may not be read from a page; what is seen of them whole may be.
    const whole = at.left >= 0 && at.top >= 0 && at.right <= innerWidth && at.bottom <= innerHeight;
    const { left, top, right, bottom } = at;
    return whole ? { box: { left, top, right, bottom }, width: innerWidth } : null;
  }
}
