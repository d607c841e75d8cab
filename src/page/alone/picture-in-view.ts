import type { Box } from '../../core/picture/join-lines.ts';

/** Sent alone into the page: where the picture stands in the view, or the largest one. It changes nothing there. */
export function pictureInView(src: string | null): { box: Box; width: number } | null {
  const narrowest = 60;
  const pictures: { box: Box; size: number }[] = [];
  const look = (root: Document | ShadowRoot) => {
    for (const each of root.querySelectorAll('*')) {
      if (each.shadowRoot) look(each.shadowRoot);
      const isPicture = /^(?:img|canvas|svg|video|image)$/i.test(each.localName);
      if (!isPicture || (src !== null && (each as HTMLImageElement).currentSrc !== src)) continue;
      const at = each.getBoundingClientRect();
      const box = {
        left: Math.max(0, at.left),
        top: Math.max(0, at.top),
        right: Math.min(innerWidth, at.right),
        bottom: Math.min(innerHeight, at.bottom),
      };
      const [width, height] = [box.right - box.left, box.bottom - box.top];
      if (width >= narrowest && height >= 12 && each.checkVisibility())
        pictures.push({ box, size: width * height });
    }
  };
  look(document);
  const largest = pictures.sort((a, b) => b.size - a.size)[0];
  return largest ? { box: largest.box, width: innerWidth } : null;
}
