/** What is known of shops' addresses, their shelves, and the manners a reader of shelves keeps. */
import type { ShelfFacts } from '../src/contract/shelf.ts';
import shelf from './shelf.json' with { type: 'json' };

export const shelfFacts: ShelfFacts = shelf;
