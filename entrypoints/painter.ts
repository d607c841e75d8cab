import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ours } from '../src/page/ours.ts';
import { createTellingPainter } from '../src/page/paint/notice.ts';

// Open only where tests look in; elsewhere a page cannot read what the strip says of the user's hair.
const mode = import.meta.env.MODE === 'localhost' ? 'open' : 'closed';

export default defineUnlistedScript(() => {
  ours.painter = (world) => createTellingPainter(mode, world);
});
