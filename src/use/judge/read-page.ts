import type { FoundText, TabPage } from '../../contract/messages.ts';
import { type Brings, bringsFor } from '../../core/amounts/brings.ts';
import type { Lookup } from '../../core/names/lookup.ts';
import type { Wish } from '../../core/plan/wish.ts';
import { isProtein, type Reading } from '../../core/reading/reading.ts';
import { markOfText, siteOf } from '../acts/matters/sites.ts';
import { grantedBy } from '../acts/matters/wishes.ts';
import type { Knowing } from '../knowing.ts';
import { judgeMet } from './judge-met.ts';
import type { Check } from './judge-product.ts';
import { type KnownProduct, metOnPage } from './met-product.ts';

/** One cosmetic list of a page, read and judged. */
export type ReadList = {
  list: FoundText;
  reading: Reading;
  known: KnownProduct;
  checks: Check[];
  /** It is for another place: said instead of an answer. */
  notForHair: boolean;
  proteins: number;
  /** Things looked for that it is. */
  granted: Wish[];
  /** What the product brings, where it is known how it is used. */
  brings?: Brings;
};

/** The user pointed at this text: it is read as a list whatever its names. */
const pointedAt = ['selection', 'chosen'];

/** Whether anything may be read on this page, by the user's own word. */
export const mayRead = ({ remembered: { sites } }: Pick<Knowing, 'remembered'>, url: string): boolean =>
  !siteOf(sites, url)?.paused;

/**
 * Reads and judges the lists found on a page, with a pause after each; what is no cosmetic list, or was said to be
 * none, is left out.
 */
export function* readingPage(
  knowing: Knowing,
  lookup: Pick<Lookup, 'thresholds'>,
  page: TabPage,
): Generator<void, ReadList[]> {
  const read: ReadList[] = [];
  if (!mayRead(knowing, page.url)) return read;
  for (const list of page.lists) {
    read.push(...readList(knowing, lookup, page, list));
    yield;
  }
  return read;
}

function readList(
  knowing: Knowing,
  lookup: Pick<Lookup, 'thresholds'>,
  page: TabPage,
  list: FoundText,
): ReadList[] {
  const notLists = siteOf(knowing.remembered.sites, page.url)?.notLists ?? [];
  if (notLists.includes(markOfText(list.text))) return [];
  const met = judgeMet(knowing, metOnPage(list, page));
  if (!met) return [];
  const { known, reading, notForHair, checks } = met;
  const isList = !reading.refused && reading.read >= lookup.thresholds.listAtLeast;
  if (!isList && !pointedAt.includes(list.via)) return [];
  const proteins = reading.mentions.filter(isProtein).length;
  const brings = bringsFor(reading, known, knowing.practice.washDay);
  const granted = notForHair ? [] : grantedBy(knowing, { reading, kind: known.kind });
  return [{ list, reading, known, checks, notForHair, proteins, granted, ...(brings && { brings }) }];
}
