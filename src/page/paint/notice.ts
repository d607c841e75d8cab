import type { Told } from '../../contract/messages.ts';
import type { Drawing, StripAction } from '../../contract/paint-order.ts';
import { draw, fill } from './draw.ts';
import { createHost, type Host } from './host/host.ts';
import { createPainter, type Painter, type PainterWorld } from './painter.ts';

/** What painting needs from outside, where acts answer. */
export type TellingWorld = Omit<PainterWorld, 'act'> & {
  act(list: number, action: StripAction): Promise<Told>;
  undo(key: string): Promise<Told>;
};

const stays = 12_000;

/**
 * A painter whose strip says what came of each act, with the way back, in a label of its own: it stands for a
 * while even where the act took the strip away.
 */
export function createTellingPainter(mode: ShadowRootMode, { act, undo, rule }: TellingWorld): Painter {
  let host: Host | undefined;
  let orphaned: Drawing[] = [];

  const show = ({ drawn, lang, dir }: Told) => {
    host?.remove();
    if (!drawn[0]) return;
    const here = createHost(mode, 'data-strandline-notice');
    host = here;
    const note = draw(['section', { class: 'notice', popover: 'manual', role: 'status', lang, dir }]);
    note.addEventListener('click', ({ isTrusted, target }) => {
      const button = isTrusted && (target as Element).closest<HTMLElement>('button');
      if (!button) return;
      here.remove();
      const { key } = button.dataset;
      if (key) void undo(key).then(show, gone);
    });
    here.root.append(note);
    here.attach([]);
    note.showPopover();
    // Said once it stands: what is there from the start is not read out.
    setTimeout(() => fill(note, drawn, []));
    const leave = () => (note.matches(':hover,:focus-within') ? setTimeout(leave, stays) : here.remove());
    setTimeout(leave, stays);
  };
  // Nobody answers an old script any more once the extension was updated.
  const gone = () => show({ drawn: orphaned, lang: '', dir: 'ltr' });

  const painter = createPainter(mode, {
    act: (list, action) => act(list, action).then(show, gone),
    rule,
  });
  return {
    ...painter,
    show(lists) {
      orphaned = lists[0]?.order.orphaned ?? orphaned;
      return painter.show(lists);
    },
  };
}
