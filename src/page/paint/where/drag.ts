const least = 4; // pixels before a press is a drag

/** Tells where an element is dragged to by its head, in client pixels. Buttons in the head stay buttons. */
export function whenDragged(node: HTMLElement, tell: (left: number, top: number) => void): void {
  let grip: { x: number; y: number; far?: boolean } = { x: 0, y: 0 };
  node.addEventListener('pointerdown', ({ target, x, y, pointerId, isTrusted }) => {
    if (!isTrusted || !(target as Element).closest('button,.head')?.matches('.head')) return;
    node.setPointerCapture(pointerId);
    const { left, top } = node.getBoundingClientRect();
    grip = { x: x - left, y: y - top };
  });
  node.addEventListener('pointermove', ({ x, y, pointerId }) => {
    if (!node.hasPointerCapture(pointerId)) return;
    const at = node.getBoundingClientRect();
    const [left, top] = [x - grip.x, y - grip.y];
    grip.far ||= Math.abs(left - at.left) + Math.abs(top - at.top) > least;
    if (grip.far) tell(left, top);
  });
}
