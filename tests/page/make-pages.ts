// Writes tests/page/pages/<id>/{page.html,expected.json}: `node tests/page/make-pages.ts`.
// Every shop, product and sentence is invented; ingredient names are the trade's own. Same seed, same pages.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { shopPages } from './make-shops.ts';
import { silentPages } from './make-silent.ts';

/** What a fixture expects: the lists in page order, with the product of each where the page names several. */
export type Expected = { why: string; lists: { text: string; product?: string }[] };
export type Made = Expected & { id: string; body: string; head?: string; lang?: string };

const out = new URL('./pages/', import.meta.url);
const made = [...shopPages(), ...silentPages()];
rmSync(out, { recursive: true, force: true });
for (const { id, body, head = '', lang = 'en', why, lists } of made) {
  const dir = new URL(`./${id}/`, out);
  mkdirSync(dir, { recursive: true });
  writeFileSync(
    new URL('page.html', dir),
    `<!doctype html>\n<html lang="${lang}">\n<head><meta charset="utf-8"><title>${id}</title>${head}</head>\n<body>\n${body}\n</body>\n</html>\n`,
  );
  writeFileSync(new URL('expected.json', dir), `${JSON.stringify({ why, lists }, null, 2)}\n`);
}
console.log(
  `${made.length} pages, ${made.filter((page) => page.lists.length === 0).length} of them without a list`,
);
