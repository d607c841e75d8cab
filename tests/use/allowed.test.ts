import { expect, it } from 'vitest';
import { allowedBy } from '../../src/use/reach/allowed.ts';

// Match patterns as https://developer.mozilla.org/docs/Mozilla/Add-ons/WebExtensions/Match_patterns writes them.
it.each([
  [['https://shop.example/*', 'http://localhost/*'], false, ['https://shop.example', 'http://localhost']],
  [['https://*/*'], true, []],
  [['<all_urls>', 'https://shop.example/*'], true, ['https://shop.example']],
  [['*://*/*'], true, []],
  [['https://*.shop.example/*'], false, []],
  [[], false, []],
])('%j is everywhere: %s, and the single origins %j', (patterns, everywhere, origins) => {
  expect(allowedBy(patterns)).toEqual({ everywhere, origins });
});
