import type { LabelWords } from '../label-words.ts';
import { wordSet } from './word-set.ts';

// "Hair oil 50 ml": a title of a kit.
const sized = /^\W*\p{L}[^,;\d]{2,40}\s\d{2,4}\s?ml\W*$/iu;
const measure =
  /^[(<>~≈±]*\d+(?:[.,]\d+)?(?:mg|g|kg|ml|l|oz|ppm|iu|mcg|µg|%|m)?(?:\/(?:g|ml|kg|l|oz|100g))?[).]*$/iu;
const sign =
  /^[^\p{L}\d]+$|^\(?[\p{Script=Greek}]\)?$|^\((?:\d{1,2}|[a-d])\)$|^\((?:i{1,3}|iv|vi{0,3})\)$|^[¹²³⁰⁴-⁹]+$/iu;

const isMeasure = (token: string) =>
  sign.test(token) ||
  (measure.test(token) && /\p{L}|%/u.test(token)) ||
  /^\(?(?:q\.?s\.?|to|ad|w\/w|w\/v|v\/v)\)?$/i.test(token) ||
  /^(?:mg|ml|g|iu|ppm)\.?(?:\/(?:g|ml|kg|l|100\s?g))?$/i.test(token);

const wordsOf = (text: string) => text.split(/[\s,;:/|•·()[\]"“”!.*†‡°©◊]+/).filter(Boolean);
const spokenIn = (text: string) => wordsOf(text.slice(0, 400)).filter((word) => /\p{L}/u.test(word));

const mostOfStatement = 6; // words of a caution about allergens: “Contains egg”
const fewestRunning = 4; // words
/** Running text: several words, most of them in small letters. */
const isRunning = (spoken: string[]) =>
  spoken.length >= fewestRunning && spoken.filter((word) => /^\p{Ll}/u.test(word)).length > spoken.length / 2;

/** Words beside a name, and texts that hold no name. */
export function noNames(words: LabelWords, opensStatement: (text: string) => boolean) {
  const { does, grown, praise, goods, cautions, abroad, sizes, small, leads } = words;
  const isGoods = wordSet(goods.words);
  // Of two that begin alike the longer one.
  const leadPhrases = leads.words.toSorted((a, b) => b.length - a.length);
  const isGrown = wordSet(grown.words);
  const remark = wordSet(does.words, grown.words);
  const anything = wordSet(does.words, grown.words, praise.words, goods.words, cautions.words);
  const further = wordSet(abroad.words, sizes.words);
  const telling = (word: string) => anything(word) || further(word);
  const smallWord = wordSet(small.words);
  return {
    /** A word beside a name that says what it does, how it was grown or how much it is; or a mark. */
    isLeftover: (token: string): boolean => isMeasure(token) || wordsOf(token).every(remark),

    /** The same, but for what it does. */
    isGrownOrMuch: (token: string): boolean => isMeasure(token) || wordsOf(token).every(isGrown),

    /** Whether a text that is no name holds nothing but such words: no mention, and nothing to ask. */
    isNoName(text: string): boolean {
      const spoken = spokenIn(text);
      return (
        sized.test(text) ||
        (spoken.length > 0 && spoken.every((word) => anything(word) || measure.test(word)))
      );
    },

    /** Letters of what a sentence or a page says right before a name: "Made with ", "[see all] ". */
    saidBefore(text: string): number {
      const low = text.toLowerCase();
      const open = /^[\s([…]*/.exec(low)![0].length;
      const lead = leadPhrases.find((phrase) => low.startsWith(phrase, open));
      return lead
        ? open + lead.length + /^(?![\p{L}\d])[\s)\]:…]*/u.exec(low.slice(open + lead.length))![0].length
        : 0;
    },

    /** "Curl Foam 300 ml Ingredients": a title that heads a list. */
    isTitle: (text: string): boolean =>
      /\b(?:ingredients?|inci)$/i.test(text.trim()) && spokenIn(text).some(isGoods),

    /** A word beside a name that says how it was grown or made. */
    isGrown,

    /** Whether a text says nothing but what a thing does, how it was grown or how much it is. */
    isRemark: (text: string): boolean => {
      const spoken = spokenIn(text);
      return spoken.length > 0 && spoken.every(remark);
    },

    /** Whether a line or what stands in front of a dash is a caution, a claim or a title: "Hair Mask". */
    isSentence: (text: string): boolean => {
      const spoken = spokenIn(text);
      return (
        (opensStatement(text) && spoken.length <= mostOfStatement) ||
        sized.test(text) ||
        (spoken.some((word) => telling(word) && !remark(word)) &&
          spoken.every((word) => telling(word) || smallWord(word) || measure.test(word)))
      );
    },

    /**
     * Whether a text that is no name and stands where sentences stand (after a full stop, after the last name) is
     * one: some of its words are such words or small ones, and of the rest none is a word of names, or few are.
     */
    isAside(text: string, isOfNames: (word: string) => boolean): boolean {
      if (opensStatement(text.trim()) && spokenIn(text).length <= mostOfStatement) return true;
      const spoken = spokenIn(text).filter((word) => !measure.test(word));
      const tells = spoken.filter(telling).length;
      const plain = tells + spoken.filter(smallWord).length;
      const names = spoken.filter((word) => !telling(word) && isOfNames(word)).length;
      if (tells === 0) return names === 0 && isRunning(spoken);
      return names === 0
        ? spoken.length > 1 || tells === 1
        : spoken.length > 2 && plain / spoken.length >= 0.5;
    },
  };
}
