const code =
  /\s[([#]?\s*(?:code\s)?(?:f\.?\s?i\.?\s?l|lote?|lotto|batch|charge|code|formula|ref|rev|version|sku|gtin|ean|art\.?-?nr|mhd|exp|bbe|l)\b(?:[\s.:#]|n[o°]\b)*(?=[a-z]{0,3}-?\d)(?=[\da-z/\s.-]*\d[\da-z]*\d)[\da-z][\da-z/.\s-]{2,30}[)\]]?$/i;

// "Batch code: see bottom"
const codeElsewhere = /\s[([]?(?:batch|lot)(?: code| no\.?| number)?:? (?:see|on|printed)\s.{3,30}$/i;
// "V2.1", "08/2026", "12M", "PR-118203"; but "CI 77891" is a name.
const version =
  /\s[([]?(?:v(?:er(?:sion)?)?\.?\s?\d{1,2}(?:\.\d{1,2})?|(?:0[1-9]|1[0-2])[/.-](?:20)?[23]\d|(?:6|12|18|24|36)\s?M|(?!C[IL.])[A-Z]{1,4}[ -]?\d{5,}(?:[/-]\d+)*)[)\]]?$/i;

/** Letters that a name has before the code that stands behind it: "Parfum FIL B12345/1". */
export const lengthBeforeCode = (text: string): number =>
  (code.exec(text) ?? codeElsewhere.exec(text) ?? (isNoise(text) ? null : version.exec(text)))?.index ??
  text.length;

/** Batch codes, sizes, web addresses, prices, claims such as "paraben free". */
export function isNoise(printed: string): boolean {
  // A code in brackets after a name is no reason to lose the name.
  const bare = printed.replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ');
  const text = /\p{L}{2}/u.test(bare) ? bare : printed;
  if (!/\p{L}.?\p{L}|[\p{Script=Han}\p{Script=Hangul}]/u.test(text)) return true;
  return (
    /(?:^|[\s([])(?:f\.?\s?i\.?\s?l|lot|batch|sku|barcode|ean|item no)\b\.?.*\d/i.test(text) ||
    /^(?:code|ref|rev|version|art|formula|item|nr|n°|no)\b[\s.:#]*[a-z]{0,4}\d+/i.test(text) ||
    /^[\s#([]*[a-z]{1,3}[ -]?\d{4,}[a-z\d]*(?:[/-][\da-z]+)*[\s)\]]*$/i.test(
      text.replace(/^c[il][ -]?\d/i, ''),
    ) ||
    /https?:|www\.|@\w|\.com\b|^©/i.test(text) ||
    /^(?:pzn|pao|us patent|patent no|net wt|exp|tel)\b[\s.:]*[\d#]/i.test(text) ||
    /^[\d.,\s]+(?:ml|g|kg|oz|fl\.? ?oz|l|lb)\b\.?(?:\s|$)/i.test(text) ||
    /[€$£¥]\s?\d/.test(text) ||
    /^(?:purposes?|drug facts|ph\W*\d)\b/i.test(text) ||
    /^ingredients? (?:lists? )?(?:may|are|is|can|listed|subject|that|which)\b/i.test(text) ||
    /\p{L}[\s-](?:free|frei|friendly)$/iu.test(text.trim())
  );
}
