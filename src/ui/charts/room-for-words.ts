// Nothing can be measured where a picture is drawn for a file, so letters are taken at their usual width.
const letter = 5.8; // units, at 11 px

const [narrow, broad] = [3.8, 6.4]; // of one word no mean is safe: "quase nada" has no narrow letters

const widthOf = (words: string) =>
  words.length * broad - (words.match(/[ijltfr.,'’ ]/g)?.length ?? 0) * (broad - narrow);

/** Presses a word into its room where it would stand out of it. */
export const pressed = (words: string, room: number) =>
  widthOf(words) > room ? ({ textLength: room, lengthAdjust: 'spacingAndGlyphs' } as const) : {};

/** Words in lines of so many units at most; a single longer word keeps its line. */
export const linesOf = (words: string, room: number): string[] => inLines(words.split(' '), room / letter);

/** Words in lines of so many letters at most; a single longer word keeps its line. */
export function inLines(words: readonly string[], longest: number): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && longer.length <= longest) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
