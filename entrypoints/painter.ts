import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ours } from '../src/page/ours.ts';
import { createPainter } from '../src/page/paint/painter.ts';

// Open only where tests look in; elsewhere a page cannot read what the strip says of the reader's hair.
const mode = import.meta.env.MODE === 'localhost' ? 'open' : 'closed';

export default defineUnlistedScript(() => {
  ours.painter = (world) => createPainter(mode, world);
});
