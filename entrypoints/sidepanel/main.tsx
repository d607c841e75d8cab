import type { PanelState } from '../../src/ui/panel/state.ts';
import { rootOf } from '../../src/ui/root.tsx';
import { loadOthers, loadPlace, Shell } from '../../src/ui/shell.tsx';
import { livePanel } from './live-world.ts';

const draw = rootOf<PanelState>(document.body, ({ world, place, said }) => (
  <Shell world={world} place={place} said={said} onDismiss={panel.dismiss} />
));
const panel = livePanel(
  chrome,
  (state) => {
    document.documentElement.lang = state.world.t.lang;
    document.documentElement.dir = state.world.t.dir;
    draw(state);
  },
  (place) => void loadPlace(place),
);
// The first of these takes the browser 10 ms: made now, while the background is waited for.
new Intl.NumberFormat('en');
// The place in view comes first; the others once it has had time to be drawn.
addEventListener('load', () => setTimeout(loadOthers, 600));
