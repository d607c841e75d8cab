import { anyOf, type LabelWords } from '../label-words.ts';

/** What tells codes, sizes, prices and claims, which are no names. */
export function noise(words: LabelWords, saysNoList: (text: string) => boolean) {
  const anyCode = anyOf(words.codes, words.coded);
  const code = new RegExp(
    `\\s[([#]?\\s*(?:${anyOf(words.counted)}\\s)?(?:${anyCode}|l)(?!\\p{L})(?:[\\s.:#]|n[o°](?!\\p{L}))*(?=[a-z]{0,3}-?\\d)(?=[\\da-z/\\s.-]*\\d[\\da-z]*\\d)[\\da-z][\\da-z/.\\s-]{2,30}[)\\]]?$`,
    'iu',
  );
  // "Batch code: see bottom"
  const codeElsewhere = new RegExp(
    `\\s[([]?${anyOf(words.codes)}(?: ${anyOf(words.counted)}\\.?)?:? ${anyOf(words.seeFor)}\\s.{3,30}$`,
    'iu',
  );
  const coded = new RegExp(`(?:^|[\\s([])${anyOf(words.codes)}(?![\\p{L}\\d]).*\\d`, 'iu');
  const counted = new RegExp(`^(?:${anyOf(words.counted)}|n°)(?![\\p{L}\\d])[\\s.:#]*[a-z]{0,4}\\d+`, 'iu');
  const stated = new RegExp(`^${anyOf(words.stated)}(?![\\p{L}\\d])[\\s.:]*[\\d#]`, 'iu');
  const opensFacts = new RegExp(`^(?:${anyOf(words.drugs)}(?![\\p{L}\\d])|ph\\W*\\d)`, 'iu');
  const claim = new RegExp(`\\p{L}[\\s-]${anyOf(words.glued)}$`, 'iu');

  /** Batch codes, sizes, web addresses, prices, claims such as "paraben free". */
  function isNoise(printed: string): boolean {
    // A code in brackets after a name is no reason to lose the name.
    const bare = printed.replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ');
    const text = /\p{L}{2}/u.test(bare) ? bare : printed;
    if (!/\p{L}.?\p{L}|[\p{Script=Han}\p{Script=Hangul}]/u.test(text)) return true;
    return (
      coded.test(text) ||
      counted.test(text) ||
      /^[\s#([]*[a-z]{1,3}[ -]?\d{4,}[a-z\d]*(?:[/-][\da-z]+)*[\s)\]]*$/i.test(
        text.replace(/^c[il][ -]?\d/i, ''),
      ) ||
      /https?:|www\.|@\w|\.com\b|^©/i.test(text) ||
      stated.test(text) ||
      /^[\d.,\s]+(?:ml|g|kg|oz|fl\.? ?oz|l|lb)\b\.?(?:\s|$)/i.test(text) ||
      /[€$£¥]\s?\d/.test(text) ||
      opensFacts.test(text) ||
      saysNoList(text) ||
      claim.test(text.trim())
    );
  }

  return {
    isNoise,

    /** Letters that a name has before the code that stands behind it: "Parfum FIL B12345/1". */
    lengthBeforeCode: (text: string): number =>
      (code.exec(text) ?? codeElsewhere.exec(text) ?? (isNoise(text) ? null : version.exec(text)))?.index ??
      text.length,
  };
}

// "V2.1", "08/2026", "12M", "PR-118203"; but "CI 77891" is a name.
const version =
  /(?<!(?:^|[^\p{L}])C)\s[([]?(?:v(?:er(?:sion)?)?\.?\s?\d{1,2}(?:\.\d{1,2})?|(?:0[1-9]|1[0-2])[/.-](?:20)?[23]\d|(?:6|12|18|24|36)\s?M|(?!C[IL.])[A-Z]{1,4}[ -]?\d{5,}(?:[/-]\d+)*)[)\]]?$/iu;
