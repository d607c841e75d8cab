import { findLists } from '../../../src/page/find-lists.ts';
import { openPage } from '../open-page.ts';
import type { Page } from './shop.ts';

export type Score = { found: boolean; whole: boolean; texts: string[] };

/** Declarative shadow roots become real ones, as a browser does it. */
function openShadows(root: Document | ShadowRoot): void {
  for (const template of root.querySelectorAll('template[shadowrootmode]')) {
    const host = template.parentElement!;
    const shadow = host.attachShadow({ mode: 'open' });
    shadow.innerHTML = template.innerHTML;
    template.remove();
    openShadows(shadow);
  }
}

// Spaces and marks by their ranges: classes of letters in an expression for every name take a hundred times as long.
const marks = '\\x00-\\x2f\\x3a-\\x60\\x7b-\\xbf\\u2000-\\u206f';
const mark = new RegExp(`[${marks}]`, 'g');
/** A name in any setting of spaces and marks, in lower case. */
const nameOf = (name: string) => new RegExp([...name.toLowerCase().replace(mark, '')].join(`[${marks}]*`));
const amount = /\d+([.,]\d+)?\s*(%|ppm|ppb)/g;

/** How many names of `list` a text holds, and how many other things between separators. */
function against(text: string, list: readonly string[]): { held: number; stray: number } {
  let left = text.toLowerCase();
  let held = 0;
  for (const name of [...list].sort((a, b) => b.length - a.length)) {
    const without = left.replace(nameOf(name), ' | ');
    if (without !== left) held++;
    left = without;
  }
  const stray = left
    .replace(amount, ' ')
    .split(/[,;•|·\n/]|\. /)
    .filter((part) => /\p{L}{3}/u.test(part));
  return { held, stray: stray.length };
}

/** The same of a page's letters, in this document. */
export function scoredPage(document: Document, page: Page): Score {
  openPage(document, page.html);
  openShadows(document);
  return scoredIn(document, page);
}

/**
 * Found: of every list at least half of the names stand in one found list. Whole: every list with all its names and at
 * most one stray thing, and nothing shown that is not among them.
 */
export function scoredIn(document: Document, page: Pick<Page, 'lists' | 'woven'>): Score {
  const shown = findLists(document).filter(({ elsewhere }) => !elsewhere);
  const texts = shown.map(({ text }) => text);
  const best = page.lists.map((list) => {
    const all = texts.map((text) => ({ text, ...against(text, list) }));
    return all.sort((a, b) => b.held - a.held || a.stray - b.stray)[0];
  });
  const found = best.every((each, at) => each && each.held >= page.lists[at]!.length / 2);
  const complete = best.every(
    (each, at) => each && each.held === page.lists[at]!.length && (page.woven || each.stray <= 1),
  );
  const alien = texts.some((text) => page.lists.every((list) => against(text, list).held === 0));
  return { found, whole: found && complete && !alien, texts };
}
