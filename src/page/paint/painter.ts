import type { PaintOrder, StripAction } from '../../ui/paint-order.ts';
import type { Letters } from '../letters.ts';
import { openCards } from './cards.ts';
import { type Docking, dock } from './dock.ts';
import { draw, fill } from './draw.ts';
import { follow } from './follow.ts';
import { createHost } from './host.ts';
import css from './paint.css?inline';
import { paintList } from './painted-list.ts';

export type ListToPaint = { id: number; letters: Letters; order: PaintOrder };

export type Painter = {
  /** Paints these lists, and takes back whatever was painted before. Settles when the strip stands. */
  show(lists: ListToPaint[]): Promise<void>;
  /** Puts the keyboard on the strip. */
  jump(): void;
  /** Takes everything back. */
  clear(): void;
};

/** Paints lists into a document without touching its nodes. `act` hears what the reader chose on a strip. */
export function createPainter(
  mode: ShadowRootMode,
  act: (list: number, action: StripAction) => void,
): Painter {
  let painting: Painting | undefined;
  const docking: Docking = { corner: 'bottom-end' };
  const clear = () => {
    const held = painting?.held() ?? false;
    painting?.undo();
    painting = undefined;
    return held;
  };
  return {
    async show(lists) {
      const held = clear();
      if (lists.length === 0) return;
      const now = paint(mode, lists, docking, act);
      painting = now;
      await now.stands;
      if (held) now.hold();
    },
    jump: () => painting?.jump(),
    clear,
  };
}

type Painting = { stands: Promise<void>; held(): boolean; hold(): void; jump(): void; undo(): void };

function paint(
  mode: ShadowRootMode,
  lists: ListToPaint[],
  docking: Docking,
  act: (list: number, action: StripAction) => void,
): Painting {
  const done = new AbortController();
  const { signal } = done;
  const host = createHost(mode, css);
  host.attach(undefined);
  const strip = draw(['section', { class: 'strip', popover: 'manual', tabindex: -1 }]);
  const card = draw(['div', { class: 'card', popover: 'manual', id: 'card', role: 'note' }]);
  host.root.append(strip);
  const painted = lists.map((list) => paintList(host, list));
  host.root.append(card);
  const { lang, dir } = lists[0]!.order;
  for (const node of [strip, card]) Object.assign(node, { lang, dir });

  strip.classList.toggle('several', new Set(painted.map(({ id }) => id)).size > 1);
  const docked = dock(
    strip,
    painted,
    docking,
    ({ order, dark }, folded) => {
      strip.style.colorScheme = dark ? 'dark' : 'light';
      strip.classList.toggle('folded', folded);
      strip.ariaLabel = order.strip.label;
      fill(strip, order.strip[folded ? 'folded' : 'open'], order.shared);
    },
    act,
    signal,
  );
  const cards = openCards(card, painted, signal);

  const undo = () => {
    done.abort();
    for (const list of painted) list.undo();
    cards.close();
    host.remove();
  };
  /** Whether our host could be brought where it is seen. */
  const attach = () => {
    const inModal = painted.find((list) => list.element?.closest('dialog:modal'));
    return host.attach(inModal?.element) || void undo();
  };
  const update = (reshaped: boolean) => {
    if (!attach()) return;
    for (const list of painted) list[reshaped ? 'reshape' : 'move']();
    docked.update(reshaped);
    cards.moved();
  };
  const elements = painted.flatMap((list) => list.element ?? []);
  follow(elements, signal, update);
  // Underlines are there; glyphs and strip each ask the page for its layout, in tasks of their own.
  const turns = (async () => {
    for (const list of painted) {
      await turn();
      if (signal.aborted || !attach()) return;
      list.reshape();
    }
    await turn();
    if (signal.aborted) return;
    docked.update(true);
  })();

  return {
    stands: turns,
    held: () => strip.matches(':focus-within'),
    hold: () => strip.focus({ preventScroll: true }),
    jump: docked.focus,
    undo,
  };
}

/** Lets the page have its turn. */
const turn = () => new Promise<void>((next) => setTimeout(next));
