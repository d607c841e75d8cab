import type { Catalogue, Word } from './index.ts';

const accented: Record<string, string> = Object.fromEntries(
  [...'aàeéiîoôuûcçnñyýsšzžAÀEÉIÎOÔUÛCÇNÑYÝSŠZŽ'].reduce<[string, string][]>((pairs, letter, i, all) => {
    if (i % 2 === 0) pairs.push([letter, all[i + 1]!]);
    return pairs;
  }, []),
);

/** Longer by a third and accented, with the values in their places: what is cut or not from the catalogue shows. */
export function pseudoWord(word: string): string {
  const longer = word.replace(/\{\w+\}|[a-zA-Z]/g, (part) =>
    part.length > 1 ? part : (accented[part] ?? part),
  );
  return `[${longer}${'·'.repeat(Math.ceil(word.length / 3))}]`;
}

/** A whole catalogue of them, for tests and the gallery. */
export const pseudo = (catalogue: Catalogue): Catalogue =>
  Object.fromEntries(
    Object.entries(catalogue).map(([key, word]): [string, Word] => [
      key,
      typeof word === 'string'
        ? pseudoWord(word)
        : Object.fromEntries(Object.entries(word).map(([form, text]) => [form, pseudoWord(text)])),
    ]),
  );
