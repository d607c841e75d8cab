import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { ours } from '../src/page/ours.ts';

// Comes before the reader's file where something was taught of a site: it has to ask what.
export default defineUnlistedScript(() => {
  ours.taught = true;
});
