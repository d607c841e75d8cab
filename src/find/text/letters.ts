/** Letters as they are compared: each keeps its place. */

const lookAlikes = new Map([...'аеорсухіјвкмнтѕ'].map((letter, i) => [letter, 'aeopcyxijbkmhts'[i]!]));

/** Lower case, a dotted İ as i; Cyrillic look-alikes inside Latin names become Latin. */
export function fold(text: string): string {
  const even = text.replaceAll('İ', 'i').replaceAll('’', "'");
  let low = even.toLowerCase();
  if (low.length !== text.length)
    low = even.replace(/\P{ASCII}|[A-Z]/gu, (letter) =>
      letter.toLowerCase().length === letter.length ? letter.toLowerCase() : letter,
    );
  return /[Ѐ-ӿ]/.test(low)
    ? low.replace(/[^\s,;:]+/g, (word) =>
        /[a-z]/.test(word) ? word.replace(/[Ѐ-ӿ]/g, (letter) => lookAlikes.get(letter) ?? letter) : word,
      )
    : low;
}

/** Letters that print nothing, and the edges of inline elements. */
export const unseen = /[\u00ad\u200b-\u200f\u2060\ufeff\v]/g;

/** Where text without its last white space ends. Scanned by hand: an expression for it takes quadratic time. */
export function trimmedEnd(text: string, from: number, to: number): number {
  let end = to;
  while (end > from && text[end - 1]!.trim() === '') end--;
  return end;
}

/** Where text without its first white space begins. */
export function trimmedStart(text: string, from: number, to: number): number {
  let start = from;
  while (start < to && text[start]!.trim() === '') start++;
  return start;
}
