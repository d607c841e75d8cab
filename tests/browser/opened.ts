// Every place of the panel with what can be opened in it, whatever the language: for checks of what is drawn.
import type { Page } from 'playwright-core';
import type { PlaceName } from '../../src/ui/world.ts';

export type Opened = { name: string; place: PlaceName; open: (panel: Page) => Promise<unknown> };

/** Opens whatever opens by itself: details, the sentences on terms, what unfolds. */
export const openAll = async (panel: Page) => {
  await panel.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
    for (const each of document.querySelectorAll<HTMLElement>('#place [aria-expanded=false]')) each.click();
  });
  await panel.waitForFunction(() => !document.querySelector('.pending'));
  await panel.waitForTimeout(60);
};
const first = (selector: string) => async (panel: Page) => {
  await panel.click(`${selector} >> nth=0`);
  await openAll(panel);
};
const strong = first('#place > .actions .button.strong, #place .empty .button.strong');

export const opened: Opened[] = [
  ...(['page', 'compare', 'routine', 'products', 'log', 'hair', 'settings'] as const).map(
    (place): Opened => ({ name: place, place, open: openAll }),
  ),
  {
    name: 'page-pasted',
    place: 'page',
    open: async (panel) => {
      await openAll(panel);
      await panel.fill(
        '#place details textarea',
        'Aqua, Glycerin, Lcatic Acid, Hydrolyzed Wheat Protein, Parfum',
      );
      await panel.click('#place details:has(textarea) .button.strong');
      await panel.waitForSelector('.sums');
      await openAll(panel);
    },
  },
  { name: 'page-add', place: 'page', open: first('#place .actions .button.strong') },
  {
    name: 'routine-built',
    place: 'routine',
    open: async (panel) => {
      await openAll(panel);
      await panel.click('#build .button.strong');
      await panel.waitForSelector('#build [aria-live] .button', { timeout: 8000 });
      await openAll(panel);
    },
  },
  { name: 'products-one', place: 'products', open: first('.product-name') },
  {
    name: 'products-new',
    place: 'products',
    open: async (panel) => {
      await strong(panel);
      await panel.fill('#place form textarea', 'Aqua, Glycerin, Lcatic Acid, hydrolyz');
      await panel.click('#place form .button.strong');
      await panel.waitForSelector('.error');
      await panel.waitForSelector('#new-product [role=group] button');
      await panel.waitForSelector('#new-product [role=status]:not(:empty)', { state: 'attached' });
    },
  },
  {
    name: 'log-new',
    place: 'log',
    open: async (panel) => {
      await strong(panel);
      await panel.fill('#log-entry input[type=date]', '2099-01-01');
      await panel.waitForSelector('.error');
    },
  },
  {
    name: 'hair-stretch',
    place: 'hair',
    open: async (panel) => {
      await panel.click('#place .card:has(.help-mark) > .actions .button');
      await openAll(panel);
    },
  },
  { name: 'hair-question', place: 'hair', open: first('.answered .button') },
  { name: 'hair-person', place: 'hair', open: first('.heads > .button') },
];
