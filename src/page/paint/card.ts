/** Where the card stands: under the name's first line, above where there is no room, within the view. */
export function placeCard(
  name: DOMRect,
  size: { width: number; height: number },
  view: { width: number; height: number },
) {
  const edge = 8;
  const left = Math.max(edge, Math.min(name.left, view.width - size.width - edge));
  const below = name.bottom + 10;
  const above = name.top - 12 - size.height;
  const top = below + size.height <= view.height - edge || above < edge ? below : above;
  return { left, top };
}
