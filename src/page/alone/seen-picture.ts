import type { Box } from '../../core/picture/join-lines.ts';

/** Pixels of a picture as a data URL, or where it stands in a view that is `width` wide. */
export type Seen = { pixels: string } | { box: Box; width: number };

/**
 * Sent alone into the page: the product's picture, drawn small from what is loaded already. The one the page names,
 * else the largest that leads nowhere else; of a product on a shelf, the one that stands with its link and with no
 * other picture. It changes nothing there.
 * @param on address of the page that shows it: another one, come meanwhile, has no picture of it
 */
export async function seenPicture(
  said: string | null,
  side: number,
  card: string | null = null,
  on: string | null = null,
): Promise<Seen | null> {
  const narrowest = 48;
  if (on && new URL(on).pathname !== location.pathname) return null;
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
  const wanted = card ? new URL(card) : undefined;
  const pathOf = ({ pathname }: URL) => pathname.replace(/\/$/, '');
  const lastOf = (path: string) => path.slice(path.lastIndexOf('/'));
  // A card's address is the product's own, without what a shop adds on the way there: a category, where one came from.
  const leadsToCard = (link: Element) => {
    if (!wanted || !(link as HTMLAnchorElement).href) return false;
    const to = new URL((link as HTMLAnchorElement).href, location.href);
    const [path, own] = [pathOf(to), pathOf(wanted)];
    return (
      to.host === wanted.host &&
      (path === own || (lastOf(own).length > 5 && lastOf(path) === lastOf(own))) &&
      [...wanted.searchParams].every(([name, value]) => to.searchParams.get(name) === value)
    );
  };
  const isOfCard = (image: HTMLImageElement) => {
    for (
      let around: Element | null = image.closest('a[href]') ?? image;
      around;
      around = around.parentElement
    ) {
      if (images.some((other) => other.image !== image && around!.contains(other.image))) return false;
      if ([around, ...around.querySelectorAll('a[href]')].some(leadsToCard)) return true;
    }
    return false;
  };
  const chosen = card ? images.find(({ image }) => isOfCard(image)) : (named ?? largest());
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
