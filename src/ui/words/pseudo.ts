import type { Catalogue } from './index.ts';
import { elementsOf, mapText, type Word } from './message.ts';

const accented: Record<string, string> = Object.fromEntries(
  [...'aàeéiîoôuûcçnñyýsšzžAÀEÉIÎOÔUÛCÇNÑYÝSŠZŽ'].reduce<[string, string][]>((pairs, letter, i, all) => {
    if (i % 2 === 0) pairs.push([letter, all[i + 1]!]);
    return pairs;
  }, []),
);

/** Longer by a third and accented, with the values in their places: what is cut or not from the catalogue shows. */
function pseudoWord(word: Word): Word {
  const elements = mapText(elementsOf(word), (text) =>
    text.replace(/[a-zA-Z]/g, (each) => accented[each] ?? each),
  );
  const length = JSON.stringify(word).length;
  const printed = (value: string) => ({ type: 0 as const, value });
  return [printed('['), ...elements, printed(`${'·'.repeat(Math.min(40, Math.ceil(length / 3)))}]`)];
}

/** A whole catalogue of them, for tests and the gallery. */
export const pseudo = (catalogue: Catalogue): Catalogue =>
  Object.fromEntries(Object.entries(catalogue).map(([key, word]) => [key, pseudoWord(word)]));
