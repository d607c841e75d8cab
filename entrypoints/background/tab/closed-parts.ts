import { browser } from 'wxt/browser';
import type { Finder } from '../../../src/find/finder.ts';
import { namesAList } from '../../../src/find/names/headings.ts';
import { closedLabels } from '../../../src/page/alone/closed-labels.ts';

const mostNamed = 3;

/** What closed parts of a tab that look like an ingredient list are called; none where the page may not be read. */
export async function closedParts(tab: number, finder: Finder): Promise<string[]> {
  const answers = await browser.scripting
    .executeScript({ target: { tabId: tab }, func: closedLabels })
    .catch(() => []);
  const labels = answers.flatMap(({ result }) => result ?? []);
  return [...new Set(labels)].filter((words) => namesAList(words, finder)).slice(0, mostNamed);
}
