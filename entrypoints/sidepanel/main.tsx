import { render } from 'preact';
import { Shell } from '../../src/ui/shell.tsx';
import { openPanel } from './live-world.ts';

const panel = openPanel(chrome, (state) => {
  document.documentElement.lang = state.world.t.lang;
  document.documentElement.dir = state.world.t.dir;
  render(
    <Shell world={state.world} place={state.place} said={state.said} onDismiss={panel.dismiss} />,
    document.body,
  );
});
