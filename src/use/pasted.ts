import type { Use } from '../core/names/entry.ts';
import type { ProductKind } from '../core/product/product.ts';
import { plainName } from '../core/product/same-product.ts';
import type { Met } from './knowing.ts';

/** A list that the user typed or pasted; `photo` is one of its label, to be kept with the product. */
export type Pasted = { name: string; text: string; use?: Use; kind?: ProductKind; photo?: string };

/** A text that was read from a picture, with the photo where the user wishes to keep it. */
export type BroughtPicture = { text: string; photo?: string };

export const metPasted = ({ text, photo, ...facts }: Pasted): Met => ({
  text,
  facts,
  ...(photo && { photo }),
});

const stillThere = 0.75; // of its names: a few may have been put right, another label shares fewer

/** The photo of the label that stands in the text: the last one that was brought and not written over since. */
export function photoOf(brought: readonly BroughtPicture[], text: string): string | undefined {
  const written = new Set(namesIn(text));
  return brought.findLast((each) => {
    const names = namesIn(each.text);
    return each.photo && names.filter((name) => written.has(name)).length >= names.length * stillThere;
  })?.photo;
}

const namesIn = (text: string) => text.split(/[,;]/).map(plainName).filter(Boolean);
