import type { Catalogue } from '../words/index.ts';

// By the names that the manifest calls them.
const said = {
  about: 'shell.browser.about',
  jumpToStrip: 'shell.browser.jump-to-strip',
  readShelf: 'shell.browser.read-shelf',
  button: 'shell.browser.button',
} as const;

/** What the browser itself says of the extension, as its `_locales/<language>/messages.json`. */
export const browserWords = (words: Catalogue): string =>
  JSON.stringify(
    Object.fromEntries(Object.entries(said).map(([name, key]) => [name, { message: words[key] }])),
  );
