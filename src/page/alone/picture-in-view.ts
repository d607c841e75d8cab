/** Sent alone into the page: where the picture stands in the view, or the largest one. It changes nothing there. */
export function pictureInView(src: string | null): { box: number[]; width: number } | null {
  const narrowest = 60;
  const pictures: { box: number[]; size: number }[] = [];
  const look = (root: Document | ShadowRoot) => {
    for (const each of root.querySelectorAll('*')) {
      if (each.shadowRoot) look(each.shadowRoot);
      const isPicture = /^(?:img|canvas|svg|video|image)$/i.test(each.localName);
      if (!isPicture || (src !== null && (each as HTMLImageElement).currentSrc !== src)) continue;
      const { left, top, right, bottom } = each.getBoundingClientRect();
      const box = [
        Math.max(0, left),
        Math.max(0, top),
        Math.min(innerWidth, right),
        Math.min(innerHeight, bottom),
      ];
      const [width, height] = [box[2]! - box[0]!, box[3]! - box[1]!];
      if (width >= narrowest && height >= 12 && each.checkVisibility())
        pictures.push({ box, size: width * height });
    }
  };
  look(document);
  const largest = pictures.sort((a, b) => b.size - a.size)[0];
  return largest ? { box: largest.box, width: innerWidth } : null;
}
