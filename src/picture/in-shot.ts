import type { Box } from '../core/picture/join-lines.ts';

/** Where something stands in a view that is `width` wide, in pixels of the page. */
export type InView = { box: Box; width: number };

/** The same place in a shot of that view, in the pixels of the shot. */
export function inShot({ box, width }: InView, shotWidth: number): Box {
  const at = (pixels: number) => Math.round((pixels * shotWidth) / width);
  return { left: at(box.left), top: at(box.top), right: at(box.right), bottom: at(box.bottom) };
}
