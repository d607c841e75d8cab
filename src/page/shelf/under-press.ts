const release = 100; // ms after it in which its click comes, where one does
const longest = 3000; // ms after which a press whose end was not heard holds nothing up

/**
 * Puts off drawing while something within is pressed: a button that is replaced between press and release hears no click.
 * @returns draws now, or once the press is over; of several drawings put off the last alone
 */
export function drawingAround(
  within: HTMLElement,
  win: Window,
  signal: AbortSignal,
): (draw: () => void) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waiting: (() => void) | undefined;
  const over = () => {
    timer = undefined;
    waiting?.();
    waiting = undefined;
  };
  const overIn = (ms: number) => {
    clearTimeout(timer);
    timer = setTimeout(over, ms);
  };
  within.addEventListener('pointerdown', () => overIn(longest), { signal, passive: true });
  within.addEventListener('click', () => timer && overIn(0), { signal, passive: true });
  for (const type of ['pointerup', 'pointercancel'])
    win.addEventListener(type, () => timer && overIn(release), { signal, capture: true, passive: true });
  signal.addEventListener('abort', () => clearTimeout(timer));
  return (draw) => {
    if (timer) waiting = draw;
    else draw();
  };
}
