/** Words that head a part of a label, and what follows them. */
export type Heading = 'list' | 'active' | 'inactive' | 'key' | 'contains' | 'tail' | 'not-in' | 'note';

const ingredients =
  'ingredients?|inci|ingr[eé]dients?|inhaltsstoffe|bestandteile|zusammensetzung|composition|ingredientes?|ingredienti|composizione|composi[cç][aã]o|composici[oó]n|sk[lł]adniki|sk[lł]ad|ingredi[eë]nten|samenstelling|ingredienser|sammansättning|innehåll|indhold(?:sstoffer)?|ainesosat|koostis(?:osad)?|összetev[őo]k|összetétel|compozi[țţt]ie|ingrediente|zlo[zž]en(?:ie|í)|sestavine|sudėtis|sastāvs|συστατικ[άα]|içindekiler|sastojci|slo[zž]en[ií]|состав|ингредиенты|съставки|全成分|成分|配料|전성분|성분';
const mayContain =
  '(?:may|might|can)(?: also)? contain|peut contenir|kann enthalten|kann spuren enthalten(?: von)?(?=\\s*:)|puede contener|pu[oò] contenere|pode conter|mo[zż]e zawiera[cć]|kan bevatten|может содержать|\\+\\s*\\/\\s*[-–−]|±';
const notIn =
  "free (?:from|of)|(?:formulated|made|crafted|created|blended) without|without|(?:does|do) not contain|doesn['’]?t contain|contains? no(?:ne)?|no added|never (?:any|contains?)|not in (?:it|this)|we (?:never|don['’]t) use|sans|ohne|frei von|sin|libre de|senza|sem|livre de|bez|zonder|vrij van|what['’]s not in (?:it|this)|not made with|excludes?|zero";
const notes =
  "directions?(?: for use)?|how to(?: use| apply)?|to use|usage|use|warnings?|cautions?|storage|distributed(?: by)?|manufactured(?: by| for)?|made in|produced by|benefits?|description|note|please note|disclaimer|precautions?|mode d['’]emploi|conseils? d['’]utilisation|anwendung|hinweis|modo de (?:uso|empleo)|modo d['’]uso|application|instructions?|shelf life|expiry|net(?: wt| weight| content)?|size|weight|volume|price|about|details?|features?|claims?|our promise|why we love it|good to know|suitable for|hair type|scent|fragrance notes|certifications?|packaging|recycling|questions?|address|website|tel|phone";

// "Contains less than 2% of:", "< 1 %:", "1% or less of the following:"; what goes on is the list.
const little =
  "(?:contains? |contient |enth[aä]lt |contiene |cont[eé]m )?(?:(?:less than|below|under|up to|at most|no more than|moins de|menos d[eo]|weniger als|unter|meno del?l?[’']?|inferior(?:e)? al?|inférieure? à|poniżej|mindre än|mindre end|minder dan|[<≤])\\s*\\d{1,2}(?:[.,]\\d)?\\s*%|\\d{1,2}(?:[.,]\\d)?\\s*% (?:or|and) less)(?:[^:,;]{0,40})";
const littleStart = new RegExp(`^${little}:\\s*`, 'iu');

const whole = (words: string) => new RegExp(`^(?:${words})$`, 'iu');
const start = (words: string) => new RegExp(`^(?:${words})(?![\\p{L}\\d-])`, 'iu');
const kinds: [Heading, RegExp][] = [
  ['not-in', new RegExp(`(?:^|\\s)(?:${notIn})(?:$|[\\s:])`, 'iu')],
  ['tail', new RegExp(`(?:${mayContain})`, 'iu')],
  ['inactive', /\b(?:inactive|inaktive|inactifs?|inactivos?|inattivi)\b/iu],
  ['active', /\b(?:active|actives|actifs?|activos?|attivi|wirkstoffe?|medicinal)\b/iu],
  [
    'key',
    /\b(?:key|hero|star|main|featured|notable|highlight(?:ed)?|signature|beneficial|powerhouse|cl[eé]s?|principales|clave)\b/iu,
  ],
  [
    'contains',
    whole('contains?|contient|enth[aä]lt|contiene|cont[eé]m|zawiera|bevat|allergens?|allergènes?'),
  ],
  ['note', start(notes)],
  ['list', new RegExp(`(?:^|[\\s/(])(?:${ingredients})(?:$|[\\s/)])`, 'iu')],
];
const needsIngredients: Heading[] = ['active', 'inactive', 'key'];
const ingredientWord = new RegExp(`(?:${ingredients})`, 'iu');
const longestHeading = 80; // letters before its colon

/** What the words before a colon head, if they head anything a label has. */
export function headingOf(words: string): Heading | undefined {
  const text = words.replace(/[*_"“”•>[\]{}]/g, ' ').trim();
  if (!text || text.length > longestHeading) return undefined;
  for (const [kind, test] of kinds)
    if (test.test(text)) {
      if (kind === 'key' && /\b(?:full|complete|whole)\b/i.test(text)) return 'list';
      const bare = text.split(/\s+/).length <= 2;
      if (needsIngredients.includes(kind) && !ingredientWord.test(text) && !bare) continue;
      return kind;
    }
  return undefined;
}

const tailStart = new RegExp(`^[\\s:]*(?:${mayContain})(?:\\s*[/(]\\s*(?:${mayContain})\\)?)*[\\s:)]*`, 'iu');
const notInStart = new RegExp(`^(?:(?:100 ?% )?(?:${notIn}))\\s`, 'iu');
const listStart = new RegExp(
  `^(?:(?:full |complete |product |other |inactive |active )*(?:${ingredients})(?:\\s*/\\s*(?:${ingredients}))*(?: list)?)(?![\\p{L}-])[\\s.–—-]*`,
  'iu',
);
// "SHAMPOO INGREDIENTS" on a line of its own.
const listLine = new RegExp(`^(?:[\\p{L}'’&][\\p{L}'’&-]*\\s+){1,4}(?:${ingredients})\\s*$`, 'iu');
const saysNoList = /^ingredients? (?:lists? )?(?:may|are|is|can|listed|subject|from|of|that|which|we|in)\b/i;

/** Letters of a heading over what there is little of: the list goes on after it. */
export const littleIn = (text: string): number => littleStart.exec(text)?.[0].length ?? 0;

export const startsTail = (text: string) => tailStart.test(text);

const tailWithin = new RegExp(
  `^(?:[([]\\s*)?(?:${mayContain})(?:\\s*[/(]\\s*(?:${mayContain})\\)?)*[^:,]{0,20}:`,
  'iu',
);

/** "… Tocopherol May contain: CI 77891": what may be in it, without a stop before it. */
export const opensTail = (text: string) => tailWithin.test(text);

/** A heading without a colon at the start of a piece, and how many letters it takes. */
export function leadingHeading(text: string): { kind: Heading; length: number } | undefined {
  const tail = tailStart.exec(text);
  if (tail) return { kind: 'tail', length: tail[0].length };
  const less = littleIn(text);
  if (less) return { kind: 'contains', length: less };
  const without = notInStart.exec(text);
  if (without) return { kind: 'not-in', length: without[0].length };
  if (saysNoList.test(text)) return undefined;
  const list = listStart.exec(text) ?? listLine.exec(text);
  if (!list) return undefined;
  return { kind: headingOf(list[0].trim()) ?? 'list', length: list[0].length };
}

/** Whether a line opens with a heading: `Words:` before any comma, or one of the known words. */
export function startsHeading(line: string): boolean {
  const colon = /^([^,;:(]{2,80}):(?!\d|\/\/)/.exec(line);
  return colon !== null || leadingHeading(line) !== undefined;
}
