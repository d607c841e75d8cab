/** What one printed name may be read as, best first: whole, without its brackets, its pieces, what its brackets say. */

const percent =
  /(?:[([{]\s*|(?<!\s)\s*)(?:[<>≤≥~±]\s*)?(?<![a-z]-\d{0,3})(?<!\d)\d+(?:[.,]\d+)?(?:\s*[-–]\s*\d+(?:[.,]\d+)?)?\s*(?:%|％|percent\b)(?:\s*\(?(?:w\/w|w\/v|v\/v|m\/m|p\/p)\b)?\s*[)\]}]?/gi;
// Words shops put before or after a name that say how it was grown or made, not what it is.
const qualifiers =
  /(?:^|\b)(?:(?:certified|100 ?%?|pure|natural(?:ly)?|organic(?:ally)?|organics?|bio|biologique|wild(?:crafted)?|raw|virgin|extra[- ]virgin|org\.|unrefined|refined|cold[- ]pressed|expeller[- ]pressed|fair[- ]?trade|vegan|vegetable[- ]derived|plant[- ](?:based|derived)|food[- ]grade|cosmetic[- ]grade|usp|nf|non[- ]gmo|gmo[- ]free|sustainable|derived|fresh|steam[- ]distilled|micronized|therapeutic[- ]grade|anhydrous|(?:mono|di|tri|tetra|penta|hexa|hepta|deca|hemi)hydrate|thermal|(?:allergen|phthalate|paraben|gluten|cruelty)[- ]free|ifra|kosher|ecocert|grown|sourced|filtered|active|powdered)(?:\s+|$))+/gi;
const turned = /^((?:essential )?oil|extract|butter|infusion|protein|powder|juice|milk|wax) of (.+)$/i;
const plain = /^(?!.*\d{2}-\d{2}-)[A-Za-z0-9-]+(?: [A-Za-z0-9-]+)*$/;
const qualified = new RegExp(
  `${qualifiers.source}|${String.raw`\b(?:from|derived|aus|issue|of)\b`}| - `,
  'i',
);
const origin =
  /\s+(?:\(?(?:derived |obtained |sourced |made |extracted )?from|derived|aus|issue? de|source:)\s.*$/i;

// A bar within a word is an l that was read so.
const slash = /\s*(?:[/\\]|(?<!\p{L})\||\|(?=\s))\s*/u;

// Two letters, also with a full stop between them ("C.I."), or one that is a word by itself (水).
const isWord = /\p{L}[\p{L}.]|^[Cc] [Ii] \d|[\p{Script=Han}\p{Script=Hangul}]/u;

/** The printed name as it stands, and without its brackets where it has any. */
export function wholeForms(printed: string): string[] {
  const whole = tidy(printed);
  return [...new Set([whole, tidy(withoutBrackets(whole, []))])].filter((form) => isWord.test(form));
}

const oneBracket = /^([^([\])]{3,60})[([]([a-z]{3,} [a-z. ]{3,40})[)\]]([^([\])]{0,40})$/i;
// Who described the plant: abbreviations of the International Plant Names Index, from memory.
const author =
  / (?:\((?:L|Mill|Linn)\.\) ?)?(?:\(?L(?:inn)?\.\)?|Mill\.|DC\.?|Lam\.|Willd\.|Thunb\.|Benth\.|Roxb\.|\(L\.\))(?= )/i;
const opticalForm = /^(?:[dl]|d,? ?l)(?:\([+-]\))?-(?=\p{L}{4})/iu;
// "Panax Ginseng (Root) Extract"
const partAside =
  /^(\p{L}+ \p{L}[\p{L} -]*?) ?\(((?:leaf|seed|fruit|flower|root|bark|peel|kernel|nut|stem)s?)\) (\p{L}+)$/iu;
const vitamin = /^(?:pro-?)?vit(?:amin|\.)? [a-k]\d{0,2} ?[([]([^()[\]]{4,60})[)\]]$/i;
const symbol = /^(Na|K|Mg)[ -](?=\p{L}{3})/u;
const elements: Record<string, string> = { Na: 'Sodium', K: 'Potassium', Mg: 'Magnesium' };

const part =
  /(?:^| )((?:leaf|seed|fruit|flower|root|bark|peel|kernel|nut|germ|bran)? ?(?:oil|butter|extract|juice|water|wax|powder|protein|starch))$/i;

/** What a printed name may be filed under as it stands, before any rule of the grammar is tried on it; best first. */
export function* filedForms(printed: string): Generator<string> {
  const part = partInBrackets(printed);
  if (part) yield part;
  if (partAside.test(printed)) yield printed.replace(partAside, '$1 $2 $3');
  // "Vitamin E (Tocopheryl Acetate)": the bracket says which.
  const form = vitamin.exec(printed)?.[1];
  if (form) yield form;
  // The name without its brackets is still the name.
  yield* wholeForms(printed);
  // "Argan Kernel Extract (Argania spinosa)": by its Latin name it is filed, by the plain one a rule takes it.
  yield* latinForms(printed);
  if (opticalForm.test(printed)) yield printed.replace(opticalForm, '');
  if (symbol.test(printed)) yield printed.replace(symbol, (_, sign: string) => `${elements[sign]} `);
}

/** "Cocos Nucifera (Coconut Oil)": which part of the plant is meant stands in the bracket. */
function partInBrackets(printed: string): string | undefined {
  const [, before = '', inside = '', after = ''] = oneBracket.exec(printed) ?? [];
  const [, own] = part.exec(inside) ?? [];
  return own && !after.trim() && /^\S+ \S+\s*$/.test(before) ? `${before.trim()} ${own.trim()}` : undefined;
}

/**
 * "Argan Kernel Extract (Argania spinosa)", "Aloe Vera (Aloe barbadensis) Leaf Water", "Olea europaea L. Fruit Oil":
 * the part of the plant after its Latin name alone.
 */
function latinForms(printed: string): string[] {
  if (author.test(printed)) return [printed.replace(author, '')];
  const [, before = '', inside, after = ''] = oneBracket.exec(printed) ?? [];
  if (!inside) return [];
  if (after.trim()) return [`${inside} ${after.trim()}`];
  const words = before.trim().split(/\s+/);
  return words.slice(1).map((_, i) => `${inside} ${words.slice(i + 1).join(' ')}`);
}

/** Up to a dozen forms of a printed name. Linear in the name's length; names over 300 letters have one form. */
export function nameForms(printed: string): string[] {
  const whole = tidy(printed);
  if (whole.length > 300) return [whole];
  if (plain.test(whole) && !qualified.test(whole) && !/^bio-/i.test(whole))
    return isWord.test(whole) ? [whole] : [];
  const forms = [whole];
  const inside: string[] = [];
  const bare = withoutBrackets(whole, inside);
  forms.push(bare);
  if (bare !== whole) {
    const [before, after] = aroundFirstBracket(whole);
    forms.push(whole.replace(/[[\](){}]/g, ' '), before);
    for (const text of inside) if (after) forms.push(`${text} ${after}`);
  }
  forms.push(...choicesOf(bare));
  for (const text of inside) forms.push(text, ...pieces(text, /\s*[/|\\,=;]\s*/));
  forms.push(...pieces(bare, /\s+[-–—=:]\s+|:\s+/), bare.replace(origin, ''));
  forms.push(bare.replace(turned, '$2 $1')); // "Extract of Nettle"

  if (/^bio-\p{L}/iu.test(whole)) forms.push(whole.slice('bio-'.length));
  for (const form of [...forms]) forms.push(form.replace(qualifiers, ' '));
  return [...new Set(forms.map(tidy))].filter((form) => isWord.test(form));
}

const tidy = (name: string) =>
  name
    .replace(percent, ' ')
    .replace(
      /[([]?(?<!-)\b(?:E|INS)[ -]?\d{3,4}[a-z]?\b[)\]]?(?=[ ,;/)]|$)/g,
      (number, _at: number, all: string) => (/\p{L}{3}/u.test(all.replace(number, '')) ? ' ' : number),
    )
    .replace(/\(?\b(?:cas(?: no\.?)?:? ?)?\d{2,7}-\d{2}-\d\b\)?/gi, ' ') // CAS registry numbers
    .replace(/\s+/g, ' ')
    .replace(/^[\s.,;:•·*†‡#/–-]+|(?<![\s.,;:•·*†‡#/–-])[\s.,;:•·*†‡#/–-]+$/g, '');

const polymer = /\b(?:co|cross)polym[eè]re?\b/i;

/**
 * "Glycerin/Oxybutylene Copolymer Stearyl Ether" is one polymer of all that its slashes join, no choice of names;
 * "A/B Copolymer/B Copolymère" the same in two languages. No monomer is taken for the whole.
 */
function choicesOf(name: string): string[] {
  const all = name.split(slash);
  if (!all.some((piece) => polymer.test(piece))) return pieces(name, slash);
  const names: string[] = [];
  let from = 0;
  for (const [at, piece] of all.entries())
    if (polymer.test(piece)) {
      names.push(all.slice(from, at + 1).join('/'));
      from = at + 1;
    }
  return [...names, ...all.slice(from)];
}

/** "Glycerin / Acrylates Copolymer": two names, where the second is one by itself; else one polymer. */
export function besidePolymer(printed: string): [name: string, polymer: string] | undefined {
  const [, name, other] = /^([^/]{3,80}) \/ ([^/]{3,80})$/.exec(printed) ?? [];
  return name && other && !polymer.test(name) && polymer.test(other) ? [name, other] : undefined;
}

function pieces(text: string, at: RegExp): string[] {
  const found = text.split(at);
  return found.length > 1 ? found.filter((piece) => piece.length > 2) : [];
}

/** The text outside brackets of any depth; what the outermost ones hold is put into `inside`. */
function withoutBrackets(name: string, inside: string[]): string {
  let outside = '';
  let held = '';
  let depth = 0;
  let glued = false; // "poly(…)": the bracket belongs to the word before it
  for (const letter of name) {
    if ('([{'.includes(letter)) {
      if (depth === 0) glued = /\p{L}$/u.test(outside);
      if (depth++ > 0) held += ' ';
    } else if (')]}'.includes(letter)) {
      if (depth > 0 && --depth === 0) {
        if (!glued) inside.push(held);
        held = '';
        outside += ' ';
      }
    } else if (depth > 0) held += letter;
    else outside += letter;
  }
  if (held) inside.push(held);
  return outside.replace(/\s+([/,])/g, '$1');
}

function aroundFirstBracket(name: string): [string, string] {
  const open = name.search(/[[({]/);
  const close = name.search(/[\])}]/);
  return [open < 0 ? name : name.slice(0, open), close < 0 ? '' : name.slice(close + 1).trim()];
}
