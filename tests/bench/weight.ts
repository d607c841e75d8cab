// What the extension puts into a page, gzipped: at most 15 kB all together, at most half of it before a list.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '../run/steps.ts';

export async function lines(): Promise<string[]> {
  const size = (file: string) =>
    gzipSync(readFileSync(join(root, '.output/chrome-mv3', file)), { level: 9 }).length;
  const parts = {
    reader: size('content-scripts/reader.js'),
    painter: size('painter.js'),
  };
  const all = Object.values(parts).reduce((sum, each) => sum + each, 0);
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  return [
    `content script, gzipped: ${kB(all)} all together (aim 15), ${kB(parts.reader)} on a page where no list was found (aim 7.5); ` +
      Object.entries(parts)
        .map(([name, bytes]) => `${name} ${kB(bytes)}`)
        .join(', '),
  ];
}
