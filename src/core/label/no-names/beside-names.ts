import { anyOf, type LabelWords } from '../label-words.ts';

/** What tells the words that join names, and those before and behind one; lengths are in letters, 0 where none stands. */
export function besideNames(words: LabelWords) {
  const and = `(?:${anyOf(words.and)}|&)`;
  const within = new RegExp(`\\s(?:${and}|\\+)\\s`, 'iu');
  const first = new RegExp(`^\\s(?:${and}|\\+)\\s+`, 'iu');
  const alone = new RegExp(`^\\s*${and}\\s*$`, 'iu');
  const lead = new RegExp(
    `^(?:[\\s•:;,.…·–—>_~|=)\\]\\u2060-]|\\d{1,2}[.)]\\s|#\\s?\\d+\\s|\\d{4,}\\s*[-–:]?\\s+(?=\\p{L})|(?:${and}|${anyOf(words.andOnce)})\\s)*`,
    'iu',
  );
  const holds = new RegExp(`^${anyOf(words.contain, words.holding)}:?\\s+(?=\\p{L})`, 'iu');
  const pure = new RegExp(`^\\s*${anyOf(words.pure)}(?!\\p{L})`, 'iu');
  const lengthOf = (test: RegExp, text: string): number => test.exec(text)?.[0].length ?? 0;
  return {
    /** Whether "and", or a sign for it, joins two names. */
    joinsNames: (text: string): boolean => within.test(text),

    /** Of "and" with its spaces at the beginning. */
    conjunctionIn: (text: string): number => lengthOf(first, text),

    isConjunction: (text: string): boolean => alone.test(text),

    /** Of bullets, numbering, batch numbers and "and" before a name. */
    leadIn: (text: string): number => lengthOf(lead, text),

    /** Of "contains", "with" before what a name holds. */
    holdingIn: (text: string): number => lengthOf(holds, text),

    /** Whether what stands behind a share says how natural a thing is. */
    saysHowPure: (text: string): boolean => pure.test(text),
  };
}
