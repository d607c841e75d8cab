import type { PageText, ProductClues, SentPlace } from '../contract/messages.ts';
import type { JudgedRun } from './evidence/judged.ts';
import type { Finder } from './finder.ts';
import { findRuns, type Setting } from './runs.ts';
import { embeddedLines, isStandard } from './text/embedded.ts';
import { fold } from './text/letters.ts';
import { blockAt, looseText, upFrom } from './text/page-text.ts';
import { textAndPieces } from './text/pieces.ts';
import { stateLines } from './text/state.ts';

/** One distinct list of a page, with every place that prints it (the first is the one to paint). */
export type ListIn = {
  /** The list's letters only, without its heading. Block edges and `<br>` are "\n". */
  text: string;
  /** How it was found: the structure around it, `names` when no heading announced it, or who pointed at it. */
  via: string;
  product?: { name: string };
  /** The page sells it for rooms, dishes or cloth: it is for no hair. */
  elsewhere?: true;
  /** None when it stands only in the page's data. */
  places: SentPlace[];
};

type Clues = Pick<ProductClues, 'data' | 'properties'> & Partial<ProductClues>;

/**
 * The lists in what a page sent: those the user pointed at, then those found beside them; what the page says
 * only in its data where nothing is printed. Letters and plain data only, so it runs wherever they are; with a pause
 * between parts of the work.
 */
export function* findingLists(
  texts: PageText[],
  clues: Clues | undefined,
  finder: Finder,
  each?: Setting['each'],
): Generator<void, ListIn[]> {
  const setting = { about: fold([clues?.heading, clues?.title, clues?.crumbs].join('\n')), each };
  const pointed = texts.flatMap((page, i) => (page.pointed ? pointedAt(page, i, page.pointed) : []));
  const printed: Found[] = [];
  for (const [i, page] of texts.entries())
    if (!page.pointed) printed.push(...(yield* placesIn(page, i, finder, setting)));
  const found =
    printed.length > 0 || !clues
      ? printed
      : yield* placesInData(yield* dataLines(clues, finder), finder, setting);
  return [
    ...pointed,
    ...merge(found).filter(({ text }) => pointed.every((list) => !list.text.includes(text))),
  ];
}

type Found = SentPlace & { text: string; via: string; label: string; hidden: boolean; forHome: boolean };

function* placesIn(page: PageText, i: number, finder: Finder, setting: Setting): Generator<void, Found[]> {
  const runs = yield* findRuns(page, finder, setting);
  return runs.map((segment) => {
    const block = blockAt(page, segment.from);
    return {
      ...lettersOf(page, segment),
      in: i,
      via: viaOf([...upFrom(page, block, 12)], segment),
      label: segment.label,
      forHome: segment.forHome,
      hidden: [...upFrom(page, block)].some(({ hidden }) => hidden),
    };
  });
}

/** The letters of a list; of one that is explained, its names alone, one a line. */
function lettersOf(page: PageText, { from, to, parts = [{ from, to }], soft }: JudgedRun) {
  const whole: ReturnType<typeof textAndPieces> = { text: '', pieces: [] };
  for (const part of parts) {
    const { text, pieces } = textAndPieces(page, part.from, part.to, soft);
    if (whole.text) whole.text += '\n';
    whole.pieces.push(...pieces.map((piece) => ({ ...piece, from: piece.from + whole.text.length })));
    whole.text += text;
  }
  return whole;
}

/** What a page says in its data alone: in the standard's words, or in the state that its scripts draw it from. */
function* dataLines({ data, properties, heading = '' }: Clues, finder: Finder): Generator<void, string> {
  const blocks = Map.groupBy(data, isStandard);
  const standard = embeddedLines({ data: blocks.get(true) ?? [], properties });
  const state = yield* stateLines(blocks.get(false) ?? [], heading, finder);
  return `${standard}\n\n${state}`;
}

function* placesInData(text: string, finder: Finder, setting: Setting): Generator<void, Found[]> {
  const places = yield* placesIn(looseText(text), 0, finder, setting);
  return places.map((place) => ({ ...place, via: 'data' }));
}

function pointedAt(page: PageText, i: number, { from, to, via }: NonNullable<PageText['pointed']>): ListIn[] {
  const { text, pieces } = textAndPieces(page, from, to, true);
  return text.trim() ? [{ text, via, places: pieces.length > 0 ? [{ in: i, pieces }] : [] }] : [];
}

function viaOf(around: PageText['elements'], { headed }: JudgedRun): string {
  for (const { tag, role } of around) {
    if (tag === 'details' || tag === 'table' || tag === 'dl') return tag;
    if (tag === 'dialog' || role === 'dialog') return 'dialog';
    if (role === 'tabpanel') return 'tab';
  }
  return headed === 'inline' ? 'paragraph' : headed ? 'heading' : 'names';
}

const letters = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** One list for each distinct text: a truncated copy belongs to its fullest, the visible copy is preferred. */
function merge(places: Found[]): ListIn[] {
  const groups: { key: string; places: Found[] }[] = [];
  for (const place of places) {
    const key = letters(place.text);
    const group = groups.find(
      (one) => one.key === key || (key.length > 40 && (one.key.includes(key) || key.includes(one.key))),
    );
    if (!group) groups.push({ key, places: [place] });
    else {
      group.places.push(place);
      if (key.length > group.key.length) group.key = key;
    }
  }
  const several = groups.length > 1;
  return groups.map(({ places: same }) => {
    const longest = Math.max(...same.map((place) => letters(place.text).length));
    const rank = (place: Found) =>
      (letters(place.text).length >= longest * 0.98 ? 2 : 0) + (place.hidden ? 0 : 1);
    const sorted = [...same].sort((a, b) => rank(b) - rank(a));
    const best = sorted[0]!;
    const product = several && same.find((place) => place.label)?.label;
    // Copies of the same letters are all painted: which one is in view is the page's affair.
    const places = sorted.filter(({ text, pieces }) => text === best.text && pieces.length > 0);
    return {
      text: best.text,
      via: best.via,
      places: places.map(({ in: page, pieces }) => ({ in: page, pieces })),
      ...(product ? { product: { name: product } } : {}),
      ...(same.every(({ forHome }) => forHome) ? { elsewhere: true as const } : {}),
    };
  });
}
