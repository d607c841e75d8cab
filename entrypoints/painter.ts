import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import type { StripAction } from '../src/contract/paint-order.ts';
import { createPainter, type Painter } from '../src/page/paint/painter.ts';

declare global {
  /** Left by the painter's file for the reader's file in the same isolated world; no page sees it. */
  var strandlinePainter: ((act: (list: number, action: StripAction) => void) => Painter) | undefined;
}

// Open only where tests look in; elsewhere a page cannot read what the strip says of the reader's hair.
const mode = import.meta.env.MODE === 'localhost' ? 'open' : 'closed';

export default defineUnlistedScript(() => {
  globalThis.strandlinePainter = (act) => createPainter(mode, act);
});
