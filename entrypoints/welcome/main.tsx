import type { PanelState } from '../../src/ui/panel/state.ts';
import { rootOf } from '../../src/ui/root.tsx';
import { Welcome } from '../../src/ui/welcome/welcome.tsx';
import { livePanel } from '../sidepanel/live-world.ts';

const draw = rootOf<PanelState>(document.body, ({ world, said }) => {
  const go: typeof world.go = (place) => location.assign(chrome.runtime.getURL(`/sidepanel.html#${place}`));
  return <Welcome world={{ ...world, go }} said={said} onDismiss={page.dismiss} />;
});
const page = livePanel(chrome, (state) => {
  document.documentElement.lang = state.world.t.lang;
  document.documentElement.dir = state.world.t.dir;
  document.title = state.world.t('welcome.title');
  draw(state);
});
