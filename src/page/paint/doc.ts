import { native } from './dom.ts';

/** The page's document, asked past whatever images and forms of the page shadow by their names. */
export const doc: Document = new Proxy(document, { get: (target, key) => native(target, key as 'body') });
