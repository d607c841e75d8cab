// axe-core against WCAG 2.0–2.2 A and AA and its best practices, target sizes included: one line a node at fault.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { root } from '../run/steps.ts';

const axe = readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');

type Violation = { id: string; nodes: { target: (string | string[])[]; failureSummary?: string }[] };
type Axe = { run(where: Document, options: object): Promise<{ violations: Violation[] }> };

/** What axe finds in a document, with all its details open; with `shadowed`, only in what stands in a shadow root. */
export async function violations(page: Page, shadowed = false): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe);
  return page.evaluate(async (within) => {
    for (const each of document.querySelectorAll('details')) each.open = true;
    const { axe } = globalThis as unknown as { axe: Axe };
    const { violations: found } = await axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      rules: { 'target-size': { enabled: true } },
      resultTypes: ['violations'],
    });
    return found.flatMap(({ id, nodes }) =>
      nodes
        .filter(({ target }) => !within || Array.isArray(target[0]))
        .map(({ target, failureSummary }) => `${id}: ${target.flat().join(' ')} ${failureSummary ?? ''}`),
    );
  }, shadowed);
}

/** What axe finds in what is ours on a page. Our words are drawn by a rule: for axe, which reads no rules, they become letters. */
export async function violationsOfOurs(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    for (const { shadowRoot } of document.documentElement.children)
      for (const each of shadowRoot?.querySelectorAll<HTMLElement>('[data-t]') ?? []) {
        const words = each.dataset.t!;
        delete each.dataset.t;
        each.append(words);
      }
  });
  return violations(page, true);
}
