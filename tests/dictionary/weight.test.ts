import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';

// The worker loads all of it each time it wakes. Measured as bundled: minified JSON, gzipped together.
it('the dictionary weighs at most 130 kB gzipped, 3,000 entries at least', () => {
  const folder = join(import.meta.dirname, '../../dictionary');
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.json') && file !== 'sources.json')
    .map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as unknown);
  expect(gzipSync(JSON.stringify(files), { level: 9 }).length).toBeLessThanOrEqual(130_000);
  expect(files.flat().length).toBeGreaterThan(3000);
});
