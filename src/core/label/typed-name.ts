/** The name that is being typed, by its letters in the list. */
export type TypedName = { from: number; to: number; typed: string };

/** Sets names apart; a comma between digits belongs to a name ("1,2-Hexanediol"). */
const apart = (text: string, at: number) =>
  /[;\n•·]/.test(text[at]!) ||
  (text[at] === ',' && !(/\d/.test(text[at - 1] ?? '') && /\d/.test(text[at + 1] ?? '')));

/** The name around a place in a list that is being typed, without the blanks beside it. */
export function typedNameAt(text: string, at: number): TypedName {
  let from = Math.min(at, text.length);
  while (from > 0 && !apart(text, from - 1)) from--;
  let to = Math.min(at, text.length);
  while (to < text.length && !apart(text, to)) to++;
  while (from < to && /\s/.test(text[from]!)) from++;
  while (to > from && /\s/.test(text[to - 1]!)) to--;
  return { from, to, typed: text.slice(from, to) };
}

/** The list with a name in that place; at its end a comma follows, for the next. `at` is where one types on. */
export function withName(text: string, { from, to }: TypedName, name: string): { text: string; at: number } {
  const rest = text.slice(to);
  const after = rest.trim() === '' ? ', ' : rest;
  const before = text.slice(0, from) + name;
  return { text: before + after, at: before.length + (rest.trim() === '' ? 2 : 0) };
}
