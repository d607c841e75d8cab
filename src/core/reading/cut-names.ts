import type { Found, Lookup } from '../names/lookup.ts';
import type { Spoken } from './find-parts.ts';
import { allWordsKnown, nameAs, namedWhole, onlyPart, plainWords } from './tokens.ts';

const mostPieces = 4;
const mostByRule = 2; // pieces that a rule of the grammar alone may join
const between = /^[\s,;•·|*.–—-]{1,8}$/u;
const chainBefore = /(?:^|[,;•\n]\s*)(c\d{1,2}-\d{1,2})(\s*[,;•\n]\s*)$/i;
// Not the first of two locants: "SD Alcohol 39-B, 1,2-Hexanediol".
const numberAfter = /^\s*[,;•|\n]\s*(-\s?)?(\d{1,3})(?=\s*(?:[;•|\n]|\.(?!\s+\S)|,(?!\s?\d)|$))/;

/** Neighbours that only together are a name, joined: "Butylene, Glycol", "Polyquaternium,-11". */
export function joinedCuts(
  text: string,
  spoken: Spoken[],
  lookup: Lookup,
  refused: (printed: string) => boolean,
): Spoken[] {
  const joins = allJoins(text, spoken, lookup).filter(({ found }) => !refused(found.printed));
  if (joins.length === 0) return spoken;
  const sure = joins.filter((join) =>
    joins.every((other) => other === join || !overlap(join, other) || beats(join, other)),
  );
  const out: Spoken[] = [];
  for (let i = 0; i < spoken.length; i++) {
    const join = sure.find(({ first }) => first === i);
    if (!join) out.push(spoken[i]!);
    else {
      const { part } = spoken[i]!;
      const beside =
        part.within === undefined ? 0 : spoken.filter((other) => other.part.within === part.within).length;
      // "Inositol (Rice, Extract)": a bracket that holds one name lists none, it says the name before it again.
      if (beside === join.last - join.first + 1) {
        i = join.last;
        continue;
      }
      const raw = text.slice(join.from, join.to);
      out.push({ part: { ...part, raw, from: join.from, to: join.to, names: [raw] }, found: join.found });
      i = join.last;
    }
  }
  return out;
}

type Join = {
  first: number;
  /** Where it begins on the label. */
  from: number;
  last: number;
  to: number;
  /** Pieces in it that are no name alone. */
  unknown: number;
  exact: boolean;
  found: Extract<Found, { how: 'mended' }>;
};

const overlap = (a: Join, b: Join) => a.first <= b.last && b.first <= a.last;

/** Of two joins over the same pieces: more unknown pieces explained, then fewer known ones spent, then the INCI name. */
function beats(a: Join, b: Join): boolean {
  if (a.unknown !== b.unknown) return a.unknown > b.unknown;
  const [sizeA, sizeB] = [a.last - a.first, b.last - b.first];
  return sizeA === sizeB ? a.exact && !b.exact : sizeA < sizeB;
}

function allJoins(text: string, spoken: Spoken[], lookup: Lookup): Join[] {
  const joins: Join[] = [];
  for (let first = 0; first < spoken.length; first++) {
    const { part, found } = spoken[first]!;
    const number = numberAfter.exec(text.slice(part.to, part.to + 16));
    if (number && (found.how !== 'exact' || number[1])) {
      const whole = lookup.named(`${part.raw}-${number[2]}`);
      if (whole.how !== 'none' && allWordsKnown(part.raw, lookup))
        joins.push(joinOf(text, spoken, first, first, part.to + number[0].length, whole));
    }
    const chain = chainBefore.exec(text.slice(Math.max(0, part.from - 16), part.from));
    if (chain) {
      const whole = namedWhole(`${chain[1]} ${part.raw}`, lookup);
      const [from, to] = [part.from - chain[1]!.length - chain[2]!.length, part.to];
      if (whole.how !== 'none') joins.push({ ...joinOf(text, spoken, first, first, to, whole), from });
    }
    for (let last = first + 1; last < Math.min(spoken.length, first + mostPieces); last++) {
      const [a, b] = [spoken[last - 1]!.part, spoken[last]!.part];
      if (a.list !== b.list || a.within !== b.within || a.tail !== b.tail) break;
      if (!between.test(text.slice(a.to, b.from))) break;
      const pieces = spoken.slice(first, last + 1);
      const whole = joinedName(pieces, lookup);
      if (whole) joins.push(joinOf(text, spoken, first, last, b.to, whole));
    }
  }
  return joins;
}

function joinOf(text: string, spoken: Spoken[], first: number, last: number, to: number, whole: Named): Join {
  const { from } = spoken[first]!.part;
  const printed = text.slice(from, to).replace(/\s+/g, ' ');
  return {
    first,
    from,
    last,
    to,
    unknown: spoken.slice(first, last + 1).filter(({ found }) => found.how === 'none').length,
    exact: whole.how === 'exact',
    found: { how: 'mended', name: whole.name, printed, damage: 'cut' },
  };
}

type Named = Exclude<Found, { how: 'none' }>;

/** The name that pieces are together, where a piece is none alone and every word is a word of names. */
function joinedName(pieces: Spoken[], lookup: Lookup): Named | undefined {
  const goesOn = (raw: string) => raw.startsWith('(') || onlyPart.test(raw);
  const known = pieces.every(({ found }) => found.how !== 'none');
  if (known && !(pieces.length === 2 && goesOn(pieces[1]!.part.raw))) return undefined;
  const raws = pieces.map(({ part }) => part.raw.replace(/^[-\s]+|[-\s]+$/g, ''));
  if (!raws.every((raw) => plainWords(raw).length > 0)) return undefined;
  const alone = new Set(pieces.map(({ found }) => (found.how === 'none' ? '' : found.name)));
  for (const sign of [' ', ',', '-', '']) {
    const text = raws.join(sign);
    const found = namedWhole(text, lookup);
    if (found.how === 'none') continue;
    if (found.how !== 'pattern') return { ...found, name: nameAs(text, found, lookup) };
    // A rule of the grammar may take any word before a name: joined only what stands side by side elsewhere.
    if (sign !== ' ' || pieces.length > mostByRule) continue;
    if (!alone.has(found.name) && allWordsKnown(text, lookup) && meet(raws, lookup))
      return { ...found, name: nameAs(text, found, lookup) };
  }
  return undefined;
}

/** Whether at each cut the words on both sides are known side by side. */
const meet = (raws: string[], lookup: Lookup) =>
  raws.every((raw, i) => {
    const [before, after] = [plainWords(raws[i - 1] ?? '').at(-1), plainWords(raw)[0]];
    return i === 0 || (before && after && lookup.words().beside(before, after));
  });
