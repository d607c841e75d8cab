import type { ProductClues } from '../../src/contract/messages.ts';

/** What a page says that says nothing of its product, but for what is given. */
export const noClues = (more: Partial<ProductClues> = {}): ProductClues => ({
  base: '',
  heading: '',
  title: '',
  said: {},
  data: [],
  properties: [],
  chosen: [],
  near: '',
  crumbs: '',
  ...more,
});
