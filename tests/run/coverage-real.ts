// How lists are found in pages that strangers made, and whether recipes among them stay silent. The pages are no part
// of the project: `--fetch` brings them with apt. Those of the kept half are only counted.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { Window } from 'happy-dom';
import { type Score, scoredIn } from '../page/other/score.ts';
import { changesOf } from '../page/real/changes.ts';
import { type Host, hostOf, kindNames, putList } from '../page/real/make.ts';
import { silentNames, tempt } from '../page/real/silent.ts';
import { folder, type Saved, savedPages } from '../page/real/stated.ts';

const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

type Row = Score & { kind: string; half: string; file: string; names?: string[] | undefined };

/** Brings the source package into `folder`; sources of Debian must be among those of apt. */
function fetchPages(): void {
  mkdirSync(folder, { recursive: true });
  try {
    execFileSync('apt-get', ['source', '--download-only', 'python3-recipe-scrapers'], { cwd: folder });
  } catch {} // its second file is not everywhere, the first is all we need
  const tar = readdirSync(folder).find((name) => name.endsWith('.orig.tar.gz'));
  if (tar) execFileSync('tar', ['-xzf', tar], { cwd: folder });
}

function scoredHost(host: Host): Row[] {
  const { document, half, file } = host;
  const changes = changesOf(document);
  const only = process.env.SHAPE;
  const rows: Row[] = [];
  for (const kind of kindNames) {
    if (host.printings.length === 0 || (only && only !== kind)) continue;
    const names = putList(kind, host, changes);
    if (names) rows.push({ ...scoredIn(document, { lists: [names] }), kind, half, file, names });
    changes.undo();
  }
  for (const kind of silentNames) {
    if (only && only !== kind) continue;
    if (tempt(kind, host, changes)) rows.push({ ...scoredIn(document, { lists: [] }), kind, half, file });
    changes.undo();
  }
  return rows;
}

const isMiss = ({ names, whole, texts }: Row) => (names ? !whole : texts.length > 0);

function printMiss({ file, kind, names, texts }: Row): void {
  console.log(`    ${basename(file)} · ${kind}`);
  console.log(`      want ${JSON.stringify(names ?? [])}\n      ⇒ ${JSON.stringify(texts)}`);
}

async function rowsOf(pages: Saved[]): Promise<Row[]> {
  const { DOMParser } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  const rows: Row[] = [];
  for (const page of pages) {
    const parsed = new DOMParser().parseFromString(readFileSync(page.file, 'utf8'), 'text/html');
    const scores = scoredHost(hostOf(parsed as unknown as Document, page));
    rows.push(...scores);
    if (process.argv.includes('--bad') && page.half === 'seen')
      for (const row of scores.filter(isMiss)) printMiss(row);
    await new Promise(setImmediate); // what is held weakly goes between turns only
  }
  return rows;
}

/**
 * Prints found and whole of each kind of both halves; with `--bad` the misses of the seen half.
 * @param every one page of so many is taken
 */
export async function printRealCoverage(every = Number(process.env.EVERY ?? 1)): Promise<void> {
  if (process.argv.includes('--fetch')) fetchPages();
  const { PAGE: only, HALF: one } = process.env;
  const pages = savedPages()
    .filter(({ file, half }) => (only ? basename(file).startsWith(`${only}.`) : half === (one ?? half)))
    .filter((_, at) => at % every === 0);
  if (pages.length === 0) {
    console.log(
      `pages of strangers: skipped, none in ${folder} (STRANDLINE_REAL names a folder, --fetch brings them)`,
    );
    return;
  }
  const rows = await rowsOf(pages);
  for (const half of ['seen', 'kept'])
    for (const kind of [...kindNames, ...silentNames]) {
      const these = rows.filter((row) => row.kind === kind && row.half === half);
      if (these.length === 0) continue;
      const misses = these.filter(isMiss).length;
      const found = these.filter((row) => row.found).length;
      console.log(
        kindNames.includes(kind)
          ? `pages of strangers, ${half} · ${kind}: found ${percent(found, these.length)}, whole and right ${percent(these.length - misses, these.length)} of ${these.length}`
          : `pages of strangers, ${half} · recipes ${kind}: ${misses} of ${these.length} show something`,
      );
    }
}

if (import.meta.main) await printRealCoverage();
