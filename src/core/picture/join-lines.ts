/** Where something stands in a picture, in its pixels. */
export type Box = { left: number; top: number; right: number; bottom: number };

/** A word as the reader of print has it; `sure` from 0 to 100. */
export type PrintedWord = { text: string; box: Box; sure: number };
export type PrintedLine = PrintedWord[];

/** Letters of a picture's text, by offset, and where they are printed. */
export type PrintedSpot = { from: number; to: number; box: Box; sure: number };
export type PictureText = { text: string; spots: PrintedSpot[] };

const separator = /[;•·|]|,(?!['’]?\d)/; // "2,6-" and "4,4'-" are of a name
const openEnd = /[,;•·|/(&-]$/;
const hyphen = /[-‐‑­]$/;

/**
 * Lines of print, in blocks → one text, with the place of every word. A name broken by a hyphen is made whole;
 * lines go on unless each is a name of its own.
 */
export function joinLines(blocks: readonly PrintedLine[][]): PictureText {
  let text = '';
  const spots: PrintedSpot[] = [];
  const column = isColumnOfNames(blocks.flat());
  for (const block of blocks) {
    const between = (block.length > 2 ? isColumnOfNames(block) : column) ? '\n' : ' ';
    for (const [nth, line] of block.entries()) {
      const gap = nth > 0 ? between : text === '' ? '' : openEnd.test(text) ? ' ' : '\n';
      for (const [at, { text: letters, box, sure }] of line.entries()) {
        if (at > 0) text += ' ';
        else if (broken(text, letters)) {
          // A hyphen of the name itself stays: before a number, after one, and before a capital.
          if (isOnlyABreak(text, letters)) {
            text = text.slice(0, -1);
            spots.at(-1)!.to -= 1;
          }
        } else text += gap;
        spots.push({ from: text.length, to: text.length + letters.length, box, sure });
        text += letters;
      }
    }
  }
  return { text, spots };
}

const broken = (before: string, next: string) => /[\p{L}\d][-‐‑­]$/u.test(before) && /^[\p{L}\d]/u.test(next);

const isOnlyABreak = (before: string, next: string) => {
  const last = before.replace(hyphen, '').at(-1)!;
  if (/\d/.test(last) || /^\d/.test(next)) return false;
  const [capitals, goesOnCapital] = [last !== last.toLowerCase(), next[0] !== next[0]!.toLowerCase()];
  return capitals || !goesOnCapital;
};

/** Each line a name of its own: hardly one holds what stands between names. */
function isColumnOfNames(lines: readonly PrintedLine[]): boolean {
  const parted = lines.filter((line) => line.some(({ text }) => separator.test(text))).length;
  return lines.length > 2 && parted < lines.length / 4;
}
