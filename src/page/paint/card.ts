/**
 * Where the card stands: under the name's last line; above where there is no room; where there is none either,
 * beside it; always within the view.
 */
export function placeCard(
  name: DOMRect,
  { width, height }: { width: number; height: number },
  view: { width: number; height: number },
) {
  const edge = 8;
  const [right, foot] = [view.width - width - edge, view.height - height - edge];
  const within = (at: number, most: number) => Math.max(edge, Math.min(at, most));
  const below = name.bottom + 10;
  const above = name.top - 12 - height;
  const fits = below <= foot || above >= edge;
  const after = name.right + 10;
  const before = name.left - 10 - width;
  return {
    left: within(fits ? name.left : after <= right || before < edge ? after : before, right),
    top: within(below > foot && above >= edge ? above : below, foot),
  };
}
