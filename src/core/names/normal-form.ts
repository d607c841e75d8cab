/** How printed names are compared: one spelling for what printers, shops and countries write differently. */

// Letters of other scripts that look like Latin ones and slip into Latin names (case as printed).
const lookAlikes: Record<string, string> = Object.fromEntries(
  [
    ['АВЕКМНОРСТУХІЈЅԁһӏаекмнорстухіјѕё', 'ABEKMHOPCTYXIJSdhlaekmhopctyxijse'],
    ['ΑΒΕΖΗΙΚΜΝΟΡΤΥΧαεικνορτυχ', 'ABEZHIKMNOPTYXaeikvoptux'],
  ].flatMap(([from, to]) => [...from!].map((letter, i) => [letter, to![i] ?? letter])),
);
/** Letters that no normal form of Unicode parts from their mark. */
export const unmarked: Record<string, string> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ı: 'i',
  Æ: 'AE',
  Œ: 'OE',
  Ø: 'O',
  Ł: 'L',
  Đ: 'D',
};
const greekPrefix: Record<string, string> = {
  α: 'alpha',
  β: 'beta',
  γ: 'gamma',
  δ: 'delta',
  ω: 'omega',
  Α: 'alpha',
  Β: 'beta',
  Γ: 'gamma',
};

// Two spellings of one word; INCI's own spelling wins. Regular plurals that INCI prints in the singular.
const spellings: [RegExp, string][] = [
  [/\bhydrol[yi][sz](?:e|ed|at|ated|ised|ized)\b/g, 'hydrolyzed'],
  [/sulph/g, 'sulf'],
  [/\bcolour/g, 'color'],
  [/\baluminium\b/g, 'aluminum'],
  [/\bfibre/g, 'fiber'],
  [/is(ed|ation)\b/g, 'iz$1'],
  [
    /\b(extract|oil|protein|peptide|butter|powder|ferment|glyceride|lipid|ceramide|tocopherol|glycol)s\b/g,
    '$1',
  ],
  [/\bamino acid\b/g, 'amino acids'],
  [/\bext\b(?!\.? *(?:d ?&|violet))\.?/g, 'extract'],
  [/\bhydrochloride\b/g, 'hcl'],
  [/methicon\b/g, 'methicone'],
  [/\bsod\.? (?=[a-z])/g, 'sodium '],
  [/\bpot(?:ass)?\. ?(?=[a-z])/g, 'potassium '],
  [/\bmag\. ?(?=[a-z])/g, 'magnesium '],
  [/\bhydrog\. ?(?=[a-z])/g, 'hydrogenated '],
  [/\bhydrol\. ?(?=[a-z])/g, 'hydrolyzed '],
  [/(?<=[a-z] )chl$/g, 'chloride'],
  [/\b(?:c i|colou?r index) ?(?:(?:no|nr)\.? ?)?(?=\d{5}\b)/g, 'ci '],
  [/\bvit\.? ?(?=[a-k]\d{0,2}\b)/g, 'vitamin '],
];
const mayNeedSpelling =
  /hydroli|hydrolys|hydrolyze\b|hydrolyzat|sulph|colour|alumini|fibre|is(?:ed|ation)\b|[tlnexrkd]s\b|amino acid\b|\bext\b|hydrochloride|methicon\b|\bvit\b|\bsod\b|\bpot(?:ass)?\.|\bmag\.|\bhydro[gl]\.| chl$|\bc i \d|index \d|index n/;
const clean = /^[a-z0-9]+(?:[ /-][a-z0-9]+)*$/;

/**
 * The normal form of a printed name: lower case, marks and look-alike letters folded, one kind of dash and
 * space, trade marks and footnote signs gone, one spelling. Patterns are written over it.
 */
export function normalName(printed: string): string {
  let name = /[^\x20-\x7e]/.test(printed) ? toLatin(printed) : printed;
  name = name.toLowerCase();
  if (!clean.test(name)) {
    name = name
      .replace(/[*^~`"”“#]+|\((?:r|tm|c)\)|\\/g, (sign) => (sign === '\\' ? '/' : ''))
      .replace(/\s+/g, ' ')
      .replace(/ ?([/-]) ?/g, '$1')
      .replace(/-{2,}/g, '-')
      .replace(/\bc\.?i\b[.:]? ?(?:no\.? ?)?(?=\d{5}\b)/g, 'ci ')
      .replace(/(\d) ?[.,] ?(\d)(?=[\d,]*-)/g, '$1,$2')
      .replace(/(?<![\s.,;:+])[\s.,;:+]+$|^[\s.,;:/-]+/g, '')
      .replace(/([[({]) | ([\])}])/g, '$1$2');
  }
  if (mayNeedSpelling.test(name)) for (const [from, to] of spellings) name = name.replace(from, to);
  return name;
}

/** The normal form of a name without what stands in brackets beside it. */
export const bareName = (printed: string): string => normalName(printed).replace(/\s*\([^)]*\)/g, '');

/** What names are filed under: the normal form without spaces, hyphens, full stops and apostrophes. */
export function keyOf(normal: string): string {
  return normal.replace(/[ \-.']+/g, '');
}

function toLatin(printed: string): string {
  let name = printed
    .replace(/[™®©℠*†‡§¶¹²³⁰⁴-⁹]/g, '')
    .replace(/[αβγδω](?=[\s-])|(?<!\p{L})[ΑΒΓ](?=-)/gu, (letter) => greekPrefix[letter]!)
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}\0]+/gu, '')
    .replace(/[‐-―−﹘﹣]/g, '-')
    .replace(/[‘’ʼ′]/g, "'")
    .replace(/[⁄∕]/g, '/')
    .replace(/[ßæœøłđıÆŒØŁĐ]/g, (letter) => unmarked[letter]!);
  // Whole words of another script stay as they are; single letters inside Latin words are folded.
  if (/[a-z]/i.test(name)) name = name.replace(/[\u0370-\u052f]/g, (letter) => lookAlikes[letter] ?? letter);
  return name.normalize('NFC');
}
