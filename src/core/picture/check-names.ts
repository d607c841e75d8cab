import type { Mention, Reading } from '../reading/reading.ts';
import type { Box, PictureText } from './join-lines.ts';

/** Why a photo was not read. */
export type PictureProblem =
  | 'no-picture'
  | 'no-list'
  | 'too-small'
  | 'blurred'
  | 'not-read'
  | 'not-let'
  | 'not-in-view';

/** What the reader of print has of one picture, and how the print was. */
export type PictureRead = PictureText & {
  /** Address of the picture as it was read, straightened; whoever shows it gives it back. */
  shown: string;
  width: number;
  height: number;
  print: { lineHeight: number; edge: number };
};

/** A name to look at beside its picture. */
export type NameToCheck = { index: number; mention: Mention; boxes: Box[]; doubt?: Doubt };
export type Doubt = 'unknown' | 'mended' | 'faint';

const sureFrom = 70; // of 100, by the reader of print
const fewest = 3; // names that make a list by themselves
const smallest = 8; // pixels of a line that can be read
const widestEdge = 0.45; // of a line's height: above, letters run into each other

/** Names of a reading with their places in the picture, doubtful ones first. */
export function namesToCheck({ mentions }: Reading, { spots }: PictureText): NameToCheck[] {
  const names = mentions.map((mention, index): NameToCheck => {
    const own = spots.filter(({ from, to }) => from < mention.to && to > mention.from);
    const doubt = doubtOf(mention, Math.min(100, ...own.map(({ sure }) => sure)));
    return { index, mention, boxes: boxesOf(own), ...(doubt && { doubt }) };
  });
  return [...names.filter(({ doubt }) => doubt), ...names.filter(({ doubt }) => !doubt)];
}

function doubtOf({ found }: Mention, sure: number): Doubt | undefined {
  if (found.how === 'none') return 'unknown';
  if (found.how === 'mended') return 'mended';
  return sure < sureFrom ? 'faint' : undefined;
}

/** One box for each line that words stand in. */
function boxesOf(words: readonly { box: Box }[]): Box[] {
  const boxes: Box[] = [];
  for (const { box } of words) {
    const last = boxes.at(-1);
    const sameLine = last && box.left >= last.left && box.top < last.bottom && box.bottom > last.top;
    if (!sameLine) boxes.push({ ...box });
    else {
      last.top = Math.min(last.top, box.top);
      last.right = Math.max(last.right, box.right);
      last.bottom = Math.max(last.bottom, box.bottom);
    }
  }
  return boxes;
}

/** Why a picture is no list that can be read; undefined where it is one. */
export function problemOf(reading: Reading, { print }: PictureRead): PictureProblem | undefined {
  const known = reading.mentions.filter(({ found }) => found.how !== 'none').length;
  if (known >= fewest || (known > 0 && reading.read >= 0.5)) return undefined;
  if (print.lineHeight > 0 && print.lineHeight < smallest) return 'too-small';
  return print.lineHeight > 0 && print.edge > widestEdge * print.lineHeight ? 'blurred' : 'no-list';
}

/** The text with names put right: by index of the mention; an empty one is taken out. */
export function putRight(text: string, { mentions }: Reading, right: ReadonlyMap<number, string>): string {
  let out = '';
  let at = 0;
  for (const [index, { from, to }] of mentions.entries()) {
    const name = right.get(index);
    if (name === undefined || from < at) continue;
    out += text.slice(at, from) + name.trim();
    at = to;
  }
  return out + text.slice(at);
}
