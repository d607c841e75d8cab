import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { type Finder, finder } from '../src/page/finder.ts';

declare global {
  /** Left by the finder's file for the reader's file in the same isolated world; no page sees it. */
  var strandlineFinder: Finder | undefined;
}

export default defineUnlistedScript(() => {
  globalThis.strandlineFinder = finder;
});
