/** Tells where an element is dragged to by its handle, in client pixels. Buttons on the handle stay buttons. */
export function whenDragged(
  node: HTMLElement,
  handle: string,
  tell: (left: number, top: number) => void,
): void {
  const least = 4; // pixels before a press is a drag
  node.addEventListener('pointerdown', ({ target, clientX, clientY, pointerId }) => {
    if (!(target as Element).closest(handle) || (target as Element).closest('button')) return;
    const at = node.getBoundingClientRect();
    const over = new AbortController();
    const on = (type: 'pointermove' | 'pointerup' | 'pointercancel', hear: (event: PointerEvent) => void) =>
      node.addEventListener(type, hear, { signal: over.signal });
    let far = false;
    node.setPointerCapture(pointerId);
    on('pointermove', (move) => {
      const [x, y] = [move.clientX - clientX, move.clientY - clientY];
      far ||= Math.abs(x) + Math.abs(y) > least;
      if (far) tell(at.left + x, at.top + y);
    });
    on('pointerup', () => over.abort());
    on('pointercancel', () => over.abort());
  });
}
