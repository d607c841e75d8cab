/** What the finder's file brings to a page that the gate let through. */
import { findLists } from './find-lists.ts';
import { lettersOf } from './letters.ts';

export const finder = { findLists, lettersOf };
export type Finder = typeof finder;
