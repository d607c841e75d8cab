import { doc } from '../paint/doc.ts';
import { draw } from '../paint/draw.ts';
import { createHost } from '../paint/host/host.ts';
import { isOurs } from '../paint/where/visibility.ts';
import { native, parentOf } from './dom.ts';

/**
 * Lets the user point at the element that holds a list: pointer or arrow keys (up: around it, down: into
 * it), press or Enter to choose, Escape to leave. Undefined when they left.
 */
export function pickElement(win: Window & typeof globalThis, words: string): Promise<Element | undefined> {
  const done = new AbortController();
  const host = createHost('closed');
  const frame = draw(['div', { class: 'picked' }]);
  const note = draw(['p', { class: 'note', popover: 'manual', role: 'status' }, words]);
  host.root.append(frame, note);
  host.attach([]);
  note.showPopover();
  let at: Element | undefined;

  return new Promise((settle) => {
    const end = (chosen: Element | undefined) => {
      done.abort();
      host.remove();
      settle(chosen);
    };
    const show = (to: Element | null | undefined) => {
      if (!to || to === doc.documentElement || isOurs(to)) return;
      at = to;
      const [here, origin] = [native(to, 'getBoundingClientRect')(), host.frame()];
      const style = frame.style;
      style.left = `${(here.left - origin.x) / origin.scale}px`;
      style.top = `${(here.top - origin.y) / origin.scale}px`;
      style.width = `${here.width / origin.scale}px`;
      style.height = `${here.height / origin.scale}px`;
    };
    const keys: Record<string, () => void> = {
      ArrowUp: () => show((at && parentOf(at)) ?? doc.body),
      ArrowDown: () => show((at && native(at, 'firstElementChild')) ?? doc.body),
      ArrowRight: () => show(at && native(at, 'nextElementSibling')),
      ArrowLeft: () => show(at && native(at, 'previousElementSibling')),
      Enter: () => end(at),
      Escape: () => end(undefined),
    };
    const hear = <K extends keyof WindowEventMap>(type: K, does: (event: WindowEventMap[K]) => void) =>
      win.addEventListener(type, (event) => event.isTrusted && does(event), {
        capture: true,
        signal: done.signal,
      });
    const take = (event: Event) => {
      event.preventDefault();
      event.stopImmediatePropagation();
    };
    hear('pointermove', ({ target }) => show(target as Element));
    for (const type of ['pointerdown', 'mousedown', 'mouseup'] as const) hear(type, take);
    hear('click', (event) => {
      take(event);
      show(event.target as Element);
      end(at);
    });
    hear('keydown', (event) => {
      const does = keys[event.key];
      if (!does) return;
      take(event);
      does();
    });
  });
}
