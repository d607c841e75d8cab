import { browser } from 'wxt/browser';
import type { Finder } from '../../src/find/finder.ts';
import { namesAList } from '../../src/find/headings.ts';

const mostNamed = 3;

/** Words of what is closed on a page: accordions, tabs, dialogs. Sent alone: it knows nothing else here. */
const closedLabels = (): string[] => {
  const ask = Document.prototype.querySelectorAll;
  const closed =
    'details:not([open]) > summary, [aria-expanded="false"], [role="tab"]:not([aria-selected="true"]), [data-toggle="tab"]:not(.active), [aria-haspopup="dialog"]';
  return [...ask.call(document, closed)]
    .slice(0, 300)
    .map((element) => String(element.textContent).replace(/\s+/g, ' ').trim())
    .filter((words) => words.length > 0 && words.length <= 60);
};

/** What closed parts of a tab that look like an ingredient list are called; none where the page may not be read. */
export async function closedParts(tab: number, finder: Finder): Promise<string[]> {
  const answers = await browser.scripting
    .executeScript({ target: { tabId: tab }, func: closedLabels })
    .catch(() => []);
  const labels = answers.flatMap(({ result }) => result ?? []);
  return [...new Set(labels)].filter((words) => namesAList(words, finder)).slice(0, mostNamed);
}
