import type { PaintOrder, StripAction } from '../../contract/paint-order.ts';
import type { Letters } from '../read/letters/letters.ts';
import { openCards } from './cards.ts';
import { native, parentOf, tagOf } from './dom.ts';
import { draw } from './draw.ts';
import { createHost } from './host/host.ts';
import { type PaintedList, paintList } from './painted-list.ts';
import { type Docking, dock } from './where/dock.ts';
import { bottomEnd } from './where/dock-spots.ts';
import { follow } from './where/follow.ts';

export type ListToPaint = { id: number; letters: Letters; order: PaintOrder };

export type Painter = {
  /** Paints these lists, and takes back whatever was painted before. Settles when the strip stands. */
  show(lists: ListToPaint[]): Promise<void>;
  /** Puts the keyboard on the strip. */
  jump(): void;
  /** Takes everything back. */
  clear(): void;
};

const mostAtOnce = 12; // lists

/** What painting needs from outside. */
export type PainterWorld = {
  /** Hears what the user chose on a strip. */
  act(list: number, action: StripAction): void;
  /** Brings the rules of our highlights to these elements and what is in them. */
  rule(selectors: string[]): void;
};

/** Paints lists into the document without touching its nodes. */
export function createPainter(mode: ShadowRootMode, { act, rule }: PainterWorld): Painter {
  const ruled = new Set<string>();
  const bringRules = (lists: ListToPaint[]) => {
    const selectors = new Set(lists.map(({ letters }) => selectorIn(letters.element)));
    const missing = [...selectors].filter((each) => each && !ruled.has(each));
    for (const each of missing) ruled.add(each);
    if (missing[0]) rule(missing);
  };
  let painting: ReturnType<typeof paint> | undefined;
  const docking: Docking = { corner: bottomEnd };
  return {
    async show(lists) {
      const held = painting?.strip.matches(':focus-within');
      painting?.undo();
      if (lists.length === 0) return;
      bringRules(lists);
      const now = paint(mode, lists, docking, act);
      painting = now;
      await now.stands;
      if (held) now.strip.focus({ preventScroll: true });
    },
    jump: () => painting?.jump(),
    clear: () => painting?.undo(),
  };
}

function paint(
  mode: ShadowRootMode,
  lists: ListToPaint[],
  docking: Docking,
  act: (list: number, action: StripAction) => void,
) {
  const done = new AbortController();
  const { signal } = done;
  const host = createHost(mode);
  const elements = lists.flatMap(({ letters }) => letters.element ?? []);
  host.attach(elements);
  const { lang, dir } = lists[0]!.order;
  const strip = draw(['section', { class: 'strip seeking', popover: 'manual', tabindex: -1, lang, dir }]);
  const card = draw(['div', { class: 'card', popover: 'manual', role: 'note', lang, dir }]);
  host.root.append(strip);
  const painted = lists.map((list) => paintList(host, list, signal));
  host.root.append(card);

  const docked = dock(strip, painted, docking, act);
  const placeCard = openCards(card, painted, signal);

  const undo = (): undefined => {
    done.abort();
    host.remove();
  };
  /** Whether our host could be brought where it is seen; all is taken back where it could not. */
  const attach = () => !signal.aborted && (host.attach(elements) || undo());
  const stale = new Set<PaintedList>();
  /** Of many lists those far out of view wait until they come near: all in one frame would hold up the page. */
  const place = (list: PaintedList, reshaped: boolean) => {
    if (reshaped) stale.add(list);
    const { top, bottom } = list.box();
    if (painted.length > mostAtOnce && (bottom < -innerHeight || top > 2 * innerHeight)) return;
    list.place(stale.delete(list));
  };
  const ask = follow(elements, signal, (reshaped) => {
    if (!attach()) return;
    for (const list of painted) place(list, reshaped);
    docked.update(reshaped);
    placeCard();
  });
  // Underlines are there; glyphs and strip each ask the page for its layout, in tasks of their own.
  const standing = async () => {
    for (const list of painted) {
      await turn();
      if (!attach()) return;
      place(list, true);
    }
    await turn();
    docked.update(true);
    // Whoever has not scrolled yet sees elements move too.
    ask(false);
  };
  return { strip, stands: standing(), jump: docked.focus, undo };
}

/** A selector that few elements but this one meet, for rules; of what holds its tree where that is a shadow root. */
function selectorIn(element: Element | undefined): string {
  const root = element && native(element, 'getRootNode')();
  if (root instanceof ShadowRoot) return selectorIn(root.host);
  let path = '';
  for (let at = element ?? null, steps = 0; at && steps < 5; at = parentOf(at), steps++) {
    const names = [...native(at, 'classList')].map((name) => `.${CSS.escape(name)}`);
    path = `${CSS.escape(tagOf(at))}${names.join('')}${path && `>${path}`}`;
  }
  return path;
}

/** Lets the page have its turn. */
const turn = () => new Promise<void>((next) => setTimeout(next));
