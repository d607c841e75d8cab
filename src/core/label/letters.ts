import { rightlyEncoded } from './encodings.ts';

// What stands in for letters that carry nothing, so that every offset stays true: removed again from names.
export const blank = '\u2060';

const entities: Record<string, string> = {
  amp: '&',
  nbsp: ' ',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  rsquo: "'",
  lsquo: "'",
  bull: '•',
  middot: '·',
  ndash: '–',
  mdash: '—',
  shy: blank,
  zwnj: blank,
  reg: '®',
  trade: '™',
  copy: '©',
  plusmn: '±',
  deg: '°',
  szlig: 'ß',
  ccedil: 'ç',
  ntilde: 'ñ',
  oelig: 'œ',
  aelig: 'æ',
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
};
const accents: Record<string, string> = {
  acute: '\u0301',
  grave: '\u0300',
  circ: '\u0302',
  uml: '\u0308',
  tilde: '\u0303',
};
const printedAlike: Record<string, string> = {
  '\\': '/',
  '，': ',',
  '、': ',',
  '،': ',',
  '；': ';',
  '（': '(',
  '）': ')',
  '【': '[',
  '】': ']',
  '：': ':',
  '／': '/',
  '。': '.',
  '\r': ' ',
  '\t': '\n',
  '\v': '\n',
  '\f': '\n',
  '\u2028': '\n',
  '\u2029': '\n',
  '|': '•',
};

/**
 * The label's letters with one sign for each kind of separator: HTML entities and tags, full-width and
 * exotic punctuation, bullets, odd spaces and invisible letters. Same length as `text`: offsets carry over.
 */
export function levelLetters(text: string): string {
  let letters = rightlyEncoded(text, blank);
  if (letters.includes('&'))
    letters = letters.replace(/&(?:#\d{1,6}|#x[0-9a-f]{1,5}|[a-z]{2,8});/gi, (entity) =>
      padded(entityOf(entity.slice(1, -1)) ?? entity, entity.length),
    );
  if (letters.includes('<'))
    letters = letters.replace(/<\u2060*\/?([a-z][a-z0-9]*)[^<>\n]{0,200}>/gi, (tag, name: string) =>
      /^(?:br|p|li|ul|ol|div|tr|td|table|h\d)$/i.test(name)
        ? `\n${' '.repeat(tag.length - 1)}`
        : blank.repeat(tag.length),
    );
  // Drug facts printed in one line: their headings open lines of their own.
  if (/\binactive(?: ingredients?\b|:)/i.test(letters))
    letters = letters.replace(/ (?=(?:in)?active ingredients?\b|inactive:|purposes?\b)/gi, '\n');
  // A word broken by a line with a soft hyphen, or with the sign that stands for one.
  if (/[\u00ad¬]/.test(letters))
    letters = letters.replace(/[\u00ad¬]\s{0,4}(?=\p{Ll})/gu, (gap) => blank.repeat(gap.length));
  // "Active ingredient Purpose Zinc Pyrithione 1 %": the title of a column.
  if (/ingredients? *\n?purposes? /i.test(letters))
    letters = letters.replace(/(?<=active ingredients?[ \n])purposes?(?= )/gi, (title) =>
      blank.repeat(title.length),
    );
  // Pictures between names part them; hearts stand in sentences too.
  if (/[\u2600-\u27bf\ud83c-\ud83e]/.test(letters))
    letters = letters
      .replace(/\ufe0f|[\u2665\u2764]|\ud83d[\udc93-\udc9f]|\ud83e[\udd0d\udd0e\udde1]/g, (sign) =>
        blank.repeat(sign.length),
      )
      .replace(/\p{Emoji_Presentation}/gu, (sign) => `•${blank.repeat(sign.length - 1)}`);
  letters = letters.replace(/\.{4,}/g, (dots) => `\n${blank.repeat(dots.length - 1)}`);
  if (isOfCells(letters)) letters = letters.replace(/\t/g, ';');
  const barIsLetter = readAsBars(letters);
  return (
    letters
      .replace(/[\\，、،；（）【】：／。\r\t\v\f\u2028\u2029|]/g, (sign) =>
        sign === '|' && barIsLetter ? sign : printedAlike[sign]!,
      )
      .replace(/[•‣▪●◦∙■◆★✓✔➤►▶◼]|(?<!\S)[①-⑳㉑-㉟]/g, '•')
      .replace(/İ/g, 'I')
      .replace(/[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g, ' ')
      .replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2061-\u2064\u2066-\u206f\ufeff\0]/g, blank)
      .replace(/(?<=[ \u2060])·(?= )/g, '•')
      .replace(/ \/\/ /g, '\n\n  ')
      .replace(/(?<= )\/\/(?= )/g, `•${blank}`)
      // Rare signs of footnotes, by a name or before their legend.
      .replace(
        /(?<!\p{Script=Greek})(?:[§¤^]|[ΨΩ](?!\p{Script=Greek}))(?!\s*(?:[,;]|$))|(?<=[\p{L}\d)])[§¤^ΨΩ#](?=\s*(?:[,;.]|$))/gu,
        '†',
      )
      .replace(/\[(?=[\da-d]\])/g, '(')
      .replace(/(?<=\([\da-d])\]/g, ')')
      // Some shops and databases mark allergens so, or print file names.
      .replace(/_/g, (_, at: number, all: string) =>
        /[\p{L}\d]/u.test(all[at - 1] ?? '') && /[\p{L}\d]/u.test(all[at + 1] ?? '') ? ' ' : blank,
      )
  );
}

/** Tabs that part names, where commas do not: cells copied out of a table. */
function isOfCells(letters: string): boolean {
  const tabs = letters.split('\t').length - 1;
  return tabs >= 3 && letters.split(/[,;]/).length * 2 < tabs;
}

/** Bars within words of a list with commas are an l that was read so. */
function readAsBars(letters: string): boolean {
  if (!letters.includes('|') || (letters.match(/,/g)?.length ?? 0) < 3) return false;
  return !/(?<!\p{L})\||\|(?![\p{L},.;)])/u.test(letters);
}

function entityOf(name: string): string | undefined {
  if (name.startsWith('#')) {
    const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10);
    return code > 0 && code <= 0xffff && !(code >= 0xd800 && code < 0xe000)
      ? String.fromCharCode(code)
      : undefined;
  }
  const plain = entities[name.toLowerCase()];
  if (plain) return plain;
  const [, letter, accent] = /^([a-z])(acute|grave|circ|uml|tilde)$/i.exec(name) ?? [];
  return letter && accent ? (letter + accents[accent.toLowerCase()]).normalize('NFC') : undefined;
}

const padded = (letter: string, length: number) =>
  letter.padEnd(length, /[\p{L}\p{M}<>]/u.test(letter) ? blank : ' ').slice(0, length);
