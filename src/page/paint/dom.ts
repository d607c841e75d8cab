import { ours } from '../ours.ts';

/** Reading a hostile document (read/dom.ts), as the reader left it for us: a page loads it once. */
export const { native, parentOf, tagOf } = ours.dom;
