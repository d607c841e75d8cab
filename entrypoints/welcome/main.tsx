import { render } from 'preact';
import { Welcome } from '../../src/ui/welcome/welcome.tsx';
import { openPanel } from '../sidepanel/live-world.ts';

const page = openPanel(chrome, ({ world, said }) => {
  document.documentElement.lang = world.t.lang;
  document.documentElement.dir = world.t.dir;
  const go: typeof world.go = (place) => location.assign(chrome.runtime.getURL(`/sidepanel.html#${place}`));
  render(<Welcome world={{ ...world, go }} said={said} onDismiss={page.dismiss} />, document.body);
});
