// What the extension puts into a page, gzipped: at most 15 kB all together, at most half of it before a list.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '../run/steps.ts';

/** Bytes of the shipped build; a shelf's script is brought to shelves alone and counted apart. */
export function weights() {
  const size = (file: string) =>
    gzipSync(readFileSync(join(root, '.output/chrome-mv3', file)), { level: 9 }).length;
  return { reader: size('content-scripts/reader.js'), painter: size('painter.js'), shelf: size('shelf.js') };
}

export async function lines(): Promise<string[]> {
  const { reader, painter, shelf } = weights();
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  return [
    `content script, gzipped: ${kB(reader + painter)} all together (aim 15), ${kB(reader)} on a page where no list was found (aim 7.5); ` +
      `reader ${kB(reader)}, painter ${kB(painter)}; on a shelf also ${kB(shelf)}`,
  ];
}
