import { numbersOf } from './counted.ts';
import { blank } from './letters.ts';
import { footnoteMarks, inBrackets } from './marks.ts';
import type { Remarks } from './no-names/remarks.ts';

/** A stretch of the label between two separators, and the separator it follows. */
export type Piece = { from: number; to: number; after: '' | ',' | '.' | '\n' | '\n\n' };

const longestBracket = 1500; // letters between a bracket and its end: anything longer never closed
const longestLine = 400; // letters of a line looked at to tell a wrapped line from a new item

/** Cuts levelled letters at separators outside brackets. Linear in the text. */
export function cutPieces(letters: string, remarks: Remarks): Piece[] {
  const { isConjunction, isLegend, opensTail, startsTail } = remarks;
  const ends = bracketEnds(letters);
  const by = separatorsOf(letters, ends);
  const pieces: Piece[] = [];
  let start = 0;
  let after: Piece['after'] = '';
  const cut = (at: number, length: number, sign: Piece['after']) => {
    if (
      letters
        .slice(start, Math.min(at, start + 500))
        .replaceAll(blank, '')
        .trim()
    ) {
      pieces.push({ from: start, to: at, after });
      after = sign;
    } else if (sign.startsWith('\n') && after !== '\n\n') after = sign; // empty: the stronger separator stays
    start = at + length;
  };
  const numbers = numbersOf(letters);
  const steps = stepsOf(letters);
  let open = 0; // end of a bracket that only holds a list together
  for (let i = 0; i < letters.length; i++) {
    const letter = letters[i]!;
    const end = ends.get(i);
    if (marksLegend(letters, i, isLegend)) cut(i, 0, '.');
    else if (letters[i - 1] === ' ' && opensTail(letters.slice(i, i + 60))) cut(i, 0, '.');
    const number = numbers.get(i);
    if (number !== undefined) {
      cut(i, number, ',');
      i += number - 1;
    } else if (end !== undefined && steps.has(i)) {
      cut(i, 0, '\n\n');
      i = end;
    } else if (end !== undefined) {
      const inside = letters.slice(i + 1, Math.min(end, i + 40));
      const joins = isConjunction(letters.slice(i + 1, Math.min(end, i + 8)));
      if (joins) cut(i, end + 1 - i, ',');
      else if (
        (startsTail(inside) && !startsTail(letters.slice(start, i).trimStart())) ||
        isListOfItsOwn(letters, start, i, end)
      ) {
        cut(i, 1, ',');
        open = end;
        continue;
      }
      i = end;
    } else if (i === open && open > 0) cut(i, 1, ',');
    else if (letter === ',' || letter === ';' || letter === '•') {
      if (
        letter !== ',' ||
        !(joinsNumbers(letters, start, i) || optical.test(letters.slice(Math.max(0, i - 2), i + 4)))
      )
        cut(i, 1, ',');
    } else if (letter === '\n') {
      const sign = lineBreak(letters, i, remarks);
      if (sign) cut(i, 1, sign);
    } else if (letter === '.' && endsName(letters, i, remarks)) cut(i, 1, '.');
    else if ((letter === '*' || letter === '†') && /^\s+[*†‡]/.test(letters.slice(i + 1, i + 4)))
      cut(i + 1, 0, '.');
    else if ((letter === '±' || letter === '+') && startsTail(letters.slice(i, i + 12))) cut(i, 0, ',');
    else if (by.has(letter) && letters[i - 1] === ' ' && letters[i + 1] === ' ') cut(i, 1, ',');
  }
  cut(letters.length, 0, '');
  return pieces;
}

const legendAfter = new RegExp(
  `^((?:[${footnoteMarks}+]|${inBrackets})+)[\\s=:–-]*((?:[^${footnoteMarks}+.;\\n(]|(?!${inBrackets})\\(){1,120})`,
  'u',
);
const isMark = new RegExp(`[${footnoteMarks}+]`);
const optical = /(?<!\p{L})d, ?l-/iu; // "D,L-Panthenol"
const step = /\[\p{L}{3,9} ?0?(\d)\](?=[\s:]*[\p{L}\d])/gu;

/** "[Step 1] Aqua … [Step 2] …": brackets that count the products of a set from one on. */
function stepsOf(letters: string): Set<number> {
  const found = [...letters.matchAll(step)];
  const counts = found.length > 1 && found.every(([, number], i) => Number(number) === i + 1);
  return new Set(counts ? found.map(({ index }) => index) : []);
}

/** "Linalool *kbA", "Aqua ¹from organic farming": a mark whose words are a legend ends the name before it. */
function marksLegend(letters: string, at: number, isLegend: Remarks['isLegend']): boolean {
  if (!(letters[at] === '(' || isMark.test(letters[at]!)) || isMark.test(letters[at - 1] ?? '')) return false;
  const [whole, , words] = legendAfter.exec(letters.slice(at, at + 160)) ?? [];
  return words !== undefined && /\p{L}{2}/u.test(words) && isLegend(whole!);
}

/** Where each bracket that closes within reach closes. */
function bracketEnds(letters: string): Map<number, number> {
  const ends = new Map<number, number>();
  const waiting: number[] = [];
  for (let i = 0; i < letters.length; i++) {
    const letter = letters[i]!;
    if (letter === '(' || letter === '[' || letter === '{') waiting.push(i);
    else if (letter === ')' || letter === ']' || letter === '}') {
      const from = waiting.pop();
      if (from !== undefined && i - from <= longestBracket) ends.set(from, i);
    } else if (letter === '\n' && /^\s*\n/.test(letters.slice(i + 1, i + 40))) waiting.length = 0;
  }
  return ends;
}

/** Spaced slashes and dashes separate names only where nothing else does. */
function separatorsOf(letters: string, ends: Map<number, number>): Set<string> {
  const count = { comma: 0, '/': 0, '-': 0, '–': 0, '+': 0, '*': 0 };
  for (let i = 0; i < letters.length; i++) {
    i = ends.get(i) ?? i;
    const letter = letters[i]!;
    if (letter === ',' || letter === ';' || letter === '•') count.comma++;
    else if ('/-–+*'.includes(letter) && letters[i - 1] === ' ' && letters[i + 1] === ' ')
      count[letter as '/']++;
  }
  const signs = ['/', '-', '–', '+', '*'] as const;
  // "Urea – soothes⏎Biotin – …": one to a line parts a name from what is said of it.
  const lines = letters.split('\n');
  const explains = (sign: string) => {
    const holding = lines.filter((line) => line.includes(` ${sign} `));
    return holding.length >= 3 && count[sign as '/'] <= holding.length;
  };
  return new Set(
    signs.filter((sign) => count[sign] >= 3 && count[sign] > 2 * count.comma && !explains(sign)),
  );
}

/** "(Aqua, Glycerin, …)": a bracket that opens a piece and holds a list is no remark on a name. */
function isListOfItsOwn(letters: string, start: number, open: number, end: number): boolean {
  if (/[^\s:*]/.test(letters.slice(start, open).replaceAll(blank, '').slice(-1))) return false;
  return (letters.slice(open, end).match(/,/g)?.length ?? 0) >= 3;
}

/** `1,2-Hexanediol`, `1, 3-…`, `0,5 %`: a comma between digits that belongs to them. */
function joinsNumbers(letters: string, start: number, at: number): boolean {
  if (!/\d/.test(letters[at - 1] ?? '')) return false;
  const next = letters.slice(at + 1, at + 20).replaceAll(blank, '');
  if (/^\d+\s*%/.test(next)) return true;
  if (/\d\d$/.test(letters.slice(at - 2, at))) return false; // PEG-40,1,2-…
  const alone = /^\s*\d$/.test(letters.slice(Math.max(start, at - 4), at));
  const locants = /^\d{1,2}(?:,\s?\d{1,2})*'?[- ]?-?\s?[\p{L}(]/iu;
  return alone ? locants.test(next.trimStart()) : /^\d{1,2}(?:,\d{1,2})*'?-[a-z([]/i.test(next);
}

/** What a name may begin with in small letters: a place in a molecule, what a peptide is made like. */
const startsSmall = /^(?:[mopndl]|sec|tert|cis|trans|alpha|beta|gamma|epsilon|sh|rh)-\p{Lu}/iu;

/** What a line break means: nothing (a wrapped line), a new item, or a new paragraph. */
function lineBreak(letters: string, at: number, { isSentence, startsHeading }: Remarks): '' | '\n' | '\n\n' {
  const from = Math.max(letters.lastIndexOf('\n', at - 1) + 1, at - longestLine);
  const line = letters.slice(from, at).replaceAll(blank, '').trim();
  const rest = letters.slice(at + 1, at + 1 + longestLine).replaceAll(blank, '');
  if (/^ *\n/.test(rest)) return '\n\n';
  const next = rest.split('\n', 1)[0]!.trim();
  if (!line || !next) return '\n';
  if (startsHeading(next) || /^(?:[*†‡•+]|[-–] |\d{1,2}[.)] )/.test(next)) return '\n';
  if (/[,;•/&(-]$/.test(line) || /^[,;)]/.test(next)) return '';
  if (/[.:!?]$/.test(line)) return '\n';
  // "Curl jelly⏎aqua, glycerin": a title, and a list in small letters.
  const isBegun = startsSmall.test(next) && !/[,;•·|]/.test(line + next);
  if (/^[\p{Ll}(]/u.test(next) && !/^ph\W/i.test(next) && !isBegun)
    return next.includes(',') && !line.includes(',') && isSentence(line) ? '\n' : '';
  // "Tocopherol⏎Dermatologically tested", ". Conditioner⏎Aqua, …": no name goes on over this break.
  if (
    isSentence(next) ||
    isSentence(next.split(/[.!](?:\s|$)/, 1)[0]!) ||
    isSentence(line.split(/[,;.•]/).at(-1)!)
  )
    return '\n';
  const [had, has] = [line.includes(','), next.includes(',')];
  if ((had && has) || isWrapped(letters, at, line, next)) return '';
  if (had) return line.length >= 40 && next.split(' ').length <= 3 ? '' : '\n';
  const before = letters.slice(Math.max(0, from - 30), from).trimEnd();
  return has && before.endsWith(',') ? '' : '\n';
}

const aroundWrap = 4; // lines on either side that tell how wide a column is
const widest = 120; // letters of a line in a column
const narrowest = 12;
const fewestCommas = 0.4; // of its lines

/** Whether the column was full here: the next word would not have gone into it, and its lines are a list with commas. */
function isWrapped(letters: string, at: number, line: string, next: string): boolean {
  const before = letters
    .slice(Math.max(0, at - aroundWrap * widest), at)
    .split('\n')
    .slice(-aroundWrap);
  const after = letters
    .slice(at + 1, at + aroundWrap * widest)
    .split('\n')
    .slice(0, aroundWrap);
  const lines = [...before, ...after].map((one) => one.replaceAll(blank, '').trim()).filter(Boolean);
  const width = Math.max(...lines.slice(lines.length > 3 ? 1 : 0).map(({ length }) => length));
  if (width > widest || line.length < narrowest) return false;
  if (lines.filter((one) => one.includes(',')).length < lines.length * fewestCommas) return false;
  return line.length + 1 + next.split(' ', 1)[0]!.length >= width;
}

const shortened =
  /(?:^|[\s(/.])(?:no|nr|art\.-nr|rev|ref|ver|ci|c\.i|vit|var|ssp|subsp|spp?|st|ext|fd|[a-z]|e\.g|i\.e|inc|ltd|approx|min|max|cf|ca|hydr|hydrol|hydrog|sod|pot|potass|mag|chl|ph|eur|mill|linn|lam|willd|thunb|benth|roxb|dc)$/i;

/** A full stop that ends a name or a sentence, rather than an abbreviation or a number. */
function endsName(letters: string, at: number, { startsHeading }: Remarks): boolean {
  const before = letters.slice(Math.max(0, at - 12), at);
  const next = letters.slice(at + 1, at + 40).replaceAll(blank, '');
  if (/^\s*$/.test(next) || /^\s*\n/.test(next)) return next.length > 0 && !shortened.test(before);
  if (shortened.test(before)) return false;
  if (/^\s/.test(next) && startsHeading(next.trimStart())) return true;
  if (/^\s+(?:www\.|https?:|©)/i.test(next)) return true;
  return (
    /^\s+["“]?[\p{Lu}*†‡•+\d[]/u.test(next) ||
    (/[\p{Ll})]$/u.test(before) && /^(?:\d+-)?\p{Lu}(?:\p{Ll}|-\p{Lu})/u.test(next)) ||
    (/\p{Lu}{5}$/u.test(before) && /^\p{Lu}{5}/u.test(next))
  );
}
