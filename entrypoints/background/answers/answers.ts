import type { Answers } from '../../../src/contract/messages.ts';
import type { Parts } from '../parts.ts';
import { toPages } from './to-pages.ts';
import { toShelves } from './to-shelves.ts';
import { toViews } from './to-views.ts';

/** What the background answers, by message. */
export const createAnswers = (parts: Parts): Answers => ({
  ...toPages(parts),
  ...toShelves(parts),
  ...toViews(parts),
});
