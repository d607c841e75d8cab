import { nameForms } from '../names/name-forms.ts';
import { blank } from './letters.ts';
import { footnoteMarks } from './marks.ts';
import type { Remarks } from './no-names/remarks.ts';
import type { LabelPart } from './split-label.ts';

type Part = Omit<LabelPart, 'list' | 'tail'>;

const marksAround = `[\\s${footnoteMarks}"“”'\\u2060]`;
const leadingMarks = new RegExp(`^(?:${marksAround}|\\+(?=[\\s+\\p{L}]))*`, 'u');
const trailingMarks = new RegExp(`(?:[\\s${footnoteMarks}.,;:•·_"”'’–—\\u2060-]|\\([a-d]\\))*$`, 'u');
const isMark = new RegExp(`[${footnoteMarks}]`);
const longestName = 300; // letters: a longer piece is looked up no further
const longestPiece = 4000; // letters of a list all of whose commas were lost

/** The names in one piece of the label: usually one; more where "and" joins them or brackets list them. */
export function partsOf(text: string, letters: string, from: number, to: number, remarks: Remarks): Part[] {
  return conjuncts(letters, from, to, remarks).flatMap(([start, end]) => {
    const part = partAt(text, letters, start, end, remarks);
    return part ? [part, ...listed(text, letters, part, remarks)] : [];
  });
}

function partAt(
  text: string,
  letters: string,
  from: number,
  to: number,
  remarks: Remarks,
  within = false,
): Part | undefined {
  const { isLegend, isNoise, isProse } = remarks;
  if (!within && letters[to] === ',')
    from += remarks.saidBefore(letters.slice(from, Math.min(to, from + 40)));
  let end =
    to - from > longestName
      ? Math.min(to, from + longestPiece)
      : from + remarks.lengthBeforeCode(letters.slice(from, to));
  const bounds = Math.min(end, to);
  end -= trailingMarks.exec(letters.slice(from, end))![0].length;
  const whole = letters.slice(from, Math.min(bounds, from + 2 * longestName)).replaceAll(blank, '');
  if (isNoise(whole) || isLegend(whole)) return undefined;
  // "Castor oil: softens and …": the name stands before the colon.
  const colon = letters.slice(from, end).search(/:\s/);
  if (colon > 1 && isProse(letters.slice(from + colon + 1, bounds))) end = from + colon;
  else if (isProse(outsideBrackets(whole))) return undefined;
  let start = from + leadingMarks.exec(letters.slice(from, end))![0].length;
  // "Parfum* … *contains Limonene": behind a mark and in a bracket what it holds is listed.
  if (within || isMark.test(letters.slice(from, start)))
    start += remarks.holdingIn(letters.slice(start, end));
  // Brackets whose other end the label forgot.
  while (/[([{]/.test(letters[start]!) && !/[)\]}]/.test(letters.slice(start, end))) start++;
  while (/[)\]}]/.test(letters[end - 1]!) && !/[([{]/.test(letters.slice(start, end))) end--;
  if (end - start < 2 && !/[\p{Script=Han}\p{Script=Hangul}]/u.test(letters.slice(start, end)))
    return undefined;
  const name = letters.slice(start, end).replaceAll(blank, '');
  const percent = printedShare(name, remarks);
  return {
    raw: text.slice(start, end),
    from: start,
    to: end,
    names: nameForms(name),
    ...(percent === undefined ? {} : { percent }),
  };
}

/** "Citral (issue de la betterave)": what stands in brackets beside a name makes no sentence of it. */
const outsideBrackets = (text: string) => {
  const bare = text.replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ');
  return /\p{L}{3}/u.test(bare) ? bare : text;
};

/** The one plain percentage beside a name; neither a range, nor "over", nor how natural it is. */
function printedShare(name: string, { saysHowPure }: Remarks): number | undefined {
  const found = [...name.matchAll(/(.?)\s*\b(\d{1,3}(?:[.,]\d+)?)\s*[%％](.{0,20})/gu)];
  const [, before, share, after] = found[0] ?? [];
  if (found.length !== 1 || !share || /[<>≥≤~±–/-]/.test(before!)) return undefined;
  if (saysHowPure(after!)) return undefined;
  const value = Number(share.replace(',', '.'));
  return value > 0 && value <= 100 ? value : undefined;
}

/** "A and B", "A & B": two names, unless the sign stands in a name (D & C Red 33). */
function conjuncts(letters: string, from: number, to: number, remarks: Remarks): [number, number][] {
  const piece = letters.slice(from, Math.min(to, from + longestName));
  if (to - from > longestName || !remarks.joinsNames(piece) || remarks.isProse(piece)) return [[from, to]];
  const cuts: [number, number][] = [];
  let depth = 0;
  let start = 0;
  for (let i = 0; i < piece.length; i++) {
    if ('([{'.includes(piece[i]!)) depth++;
    else if (')]}'.includes(piece[i]!)) depth = Math.max(0, depth - 1);
    else if (piece[i] === ' ' && depth === 0) {
      const sign = remarks.conjunctionIn(piece.slice(i, i + 8));
      const [left, right] = [piece.slice(start, i), sign ? piece.slice(i + sign) : ''];
      // A word printed with spaces between its letters has single ones that say "and" elsewhere.
      if (sign && /^ \p{L} $/u.test(piece.slice(i, i + sign)) && !/\p{L}{3}$|[\d)]$/u.test(left)) continue;
      if (!sign || !/\p{L}{3}/u.test(left) || !/\p{L}{3}/u.test(right)) continue;
      cuts.push([from + start, from + i]);
      start = i + sign;
    }
  }
  return [...cuts, [from + start, to]];
}

/** "Parfum (Linalool, Limonene)": what a bracket at the end of a name lists. */
function listed(text: string, letters: string, part: Part, remarks: Remarks): Part[] {
  const name = letters.slice(part.from, part.to);
  if (!/[)\]}]$/.test(name) || !name.includes(',')) return [];
  let depth = 0;
  let open = name.length - 1;
  for (; open >= 0; open--) {
    if (')]}'.includes(name[open]!)) depth++;
    else if ('([{'.includes(name[open]!) && --depth === 0) break;
  }
  if (open <= 0) return [];
  const parts: Part[] = [];
  let start = open + 1;
  for (let i = open + 1; i < name.length; i++) {
    const letter = name[i]!;
    if ('([{'.includes(letter)) depth++;
    const ends =
      i === name.length - 1 || (depth === 0 && letter === ',' && !/\d,\d/.test(name.slice(i - 1, i + 2)));
    if (')]}'.includes(letter)) depth--;
    if (!ends) continue;
    const inner = partAt(text, letters, part.from + start, part.from + i, remarks, true);
    if (inner) parts.push({ ...inner, within: part.from });
    start = i + 1;
  }
  return parts.length > 1 ? parts : [];
}
