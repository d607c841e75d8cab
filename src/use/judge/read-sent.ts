import type { FoundText, Messages } from '../../contract/messages.ts';
import type { KindReader } from '../../core/product/kind.ts';
import { findingLists, type ListIn } from '../../find/lists-in.ts';
import { factsOf } from '../../find/product/product-facts.ts';
import { originOf } from '../acts/matters/sites.ts';
import { inTurns } from '../in-turns.ts';
import type { Knowing } from '../knowing.ts';
import type { Readings } from '../reading/readings.ts';
import { type ReadList, readingPage } from './read-page.ts';

const mostLists = 60; // of one page: a kit has a dozen

type Sent = Pick<Messages['page-lists']['request'], 'texts' | 'clues' | 'url' | 'title'>;

/** The address of a page as it says itself, on the site that the browser says it is on. */
export const addressOn = (site: string | undefined, said: string): string =>
  site === undefined || originOf(said) === site ? said : `${site}/`;

/**
 * Makes lists of the letters that a frame sent, each with what is told of its product, and reads and judges them.
 * @param isTop the frame is its tab's own: what the page says for machines is of what it shows
 * @param off tells that it is not wanted any more: then there are none
 */
export async function readSent(
  { texts, clues, url, title }: Sent,
  isTop: boolean,
  knowing: Knowing,
  by: Pick<Readings, 'finder' | 'lookup'> & Pick<KindReader, 'withKind'>,
  off: () => boolean,
): Promise<(ReadList & Pick<ListIn, 'places'>)[]> {
  const finding = findingLists(texts, isTop ? clues : undefined, by.finder);
  const found = ((await inTurns(finding, off)) ?? []).slice(0, mostLists);
  const facts = found.length > 0 ? factsOf(clues) : undefined;
  const lists = found.map(({ places: _, product, ...text }, id): FoundText => {
    const named = product ?? facts;
    return { ...text, id, ...(named && { product: by.withKind({ ...facts, ...named }) }) };
  });
  const read = (await inTurns(readingPage(knowing, by.lookup, { url, title, lists }), off)) ?? [];
  return read.map((each) => ({ ...each, places: found[each.list.id]!.places }));
}
