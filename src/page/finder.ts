/** What the finder's file brings to a page that the gate let through. */
import { findLists } from './find-lists.ts';
import { lettersOf } from './letters.ts';
import { listOfRange, listsAt } from './pointed-at.ts';
import { readClues } from './product.ts';

export const finder = { findLists, lettersOf, listOfRange, listsAt, readClues };
export type Finder = typeof finder;
