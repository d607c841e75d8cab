// A label while it is being dressed: its names in order, what joins them, what stands before and behind.
import { type Draw, pick } from '../draws.ts';

/** What is printed for `names` (INCI, capitals); `touched` once a kind of damage has changed it. */
export type Item = { text: string; names: string[]; touched?: true };
export type Label = { items: Item[]; join: string; head: string; tail: string; text: string };
export type Half = 'looked at' | 'kept aside';

/** What a kind works on: single names, how they are listed, what stands around them, the letters of the whole. */
export type Stage = 'names' | 'list' | 'around' | 'letters';

/** `half` says who sees it; kinds of both halves take `half` to choose their wordings by. `clear` needs plain letters. */
export type Kind = {
  kind: string;
  half: Half | 'both';
  stage: Stage;
  clear?: true;
  does: (label: Label, draw: Draw, half: Half) => void;
};

const kept =
  /\b(?:peg|ppg|ci|edta|bht|bha|pca|pvp|tea|mea|dea|vp|va|pvm|ma|amp|dna|np|ap|eop|se|hc|dmdm|ipdi|smdi|pg|c\d+)\b/g;
const startOfWord = /(^|[\s/(,-])([a-zà-þ])/g;

/** "PEG-40 HYDROGENATED CASTOR OIL" → "PEG-40 Hydrogenated Castor Oil" */
export const titled = (name: string): string =>
  name
    .toLowerCase()
    .replace(kept, (word) => word.toUpperCase())
    .replace(startOfWord, (_, before: string, letter: string) => before + letter.toUpperCase());

/** "CETYL ALCOHOL" → "Cetyl alcohol" */
export const sentenced = (name: string): string =>
  name
    .toLowerCase()
    .replace(kept, (word) => word.toUpperCase())
    .replace(/^[a-z]/, (letter) => letter.toUpperCase());

/** Every second one, by the half: wordings that are looked at, and those that are only counted. */
export const ofHalf = <T>(list: readonly T[], half: Half): T[] =>
  list.filter((_, i) => (i % 2 === 0) === (half === 'looked at'));

/** Up to `most` names that nothing has changed yet and that `fits`, in their order. */
export function someOf(
  label: Label,
  draw: Draw,
  most: number,
  fits: (item: Item) => boolean = () => true,
): Item[] {
  const free = label.items.filter((item) => !item.touched && item.names.length === 1 && fits(item));
  while (free.length > most) free.splice(Math.floor(draw() * free.length), 1);
  for (const item of free) item.touched = true;
  return free;
}

/** A kind that prints up to `most` names otherwise. */
export const onNames = (
  kind: string,
  half: Kind['half'],
  print: (text: string, draw: Draw, half: Half, label: Label) => string,
  { most = 4, fits, clear }: { most?: number; fits?: (text: string) => boolean; clear?: true } = {},
): Kind => ({
  kind,
  half,
  stage: 'names',
  ...(clear && { clear }),
  does: (label, draw, half) => {
    for (const item of someOf(label, draw, most, fits && (({ text }) => fits(text))))
      item.text = print(item.text, draw, half, label);
  },
});

/** A kind that puts names in, as people call them, for names that were drawn. */
export const called = (
  kind: string,
  half: Kind['half'],
  words: readonly (readonly [printed: string, name: string])[],
  { most = 5, beside }: { most?: number; beside?: (own: string, name: string, draw: Draw) => string } = {},
): Kind => ({
  kind,
  half,
  stage: 'names',
  does: (label, draw, at) => {
    const choice = half === 'both' ? ofHalf(words, at) : words;
    const there = new Set(label.items.flatMap(({ names }) => names));
    for (const item of someOf(label, draw, most)) {
      const [own, name] = pick(draw, choice);
      if (there.has(name)) continue;
      there.add(name);
      item.names = [name];
      item.text = beside ? beside(own, titled(name), draw) : own;
    }
  },
});
