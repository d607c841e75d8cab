import type { Finder } from '../finder.ts';
import { isKnownKind } from '../names/kinds.ts';
import type { Item, Stop } from '../names/step.ts';
import type { Page } from '../text/lines.ts';
import { areWholeLines } from './form-says.ts';
import { isProduct } from './lead-says.ts';
import { count, share } from './names-say.ts';
import { isForHome } from './page-says.ts';
import {
  allKnown,
  besideLetters,
  fewestDeclared,
  fewestSpecies,
  fewestTelling,
  fewestUnheaded,
  knownShare,
  linesBelow,
  mostOwn,
} from './thresholds.ts';

/** What rules a list out. */
export function whyNot(
  page: Page,
  names: Item[],
  stop: Stop | undefined,
  finder: Finder,
  about: string,
): string | undefined {
  const n = names.length;
  const headed = stop?.stop === 'heading' || isProduct(stop, about);
  if (stop?.stop === 'denial') return 'what is left out';
  const known = share(names);
  if (known < (headed ? knownShare.heading : knownShare.none))
    return `only ${Math.round(known * 100)} % are names`;
  if (known < knownShare.built && !names.some(({ kind }) => isKnownKind(kind)))
    return 'no name is known, and some are built like none';
  if (n === 1) {
    const { kind, name } = names[0]!;
    const pressed = finder.words.single.ends(name.replace(/\([^)]*\)|[*†.]/g, '').trim());
    if (!headed || !pressed || (kind !== 'plant' && kind !== 'own') || !areWholeLines(page, names))
      return 'one name';
    if (isOneOfSeveral(page, names[0]!, finder)) return 'one of several names that are told about';
  }
  if (n <= allKnown && known < 1) return 'few names, not all known';
  if (n <= allKnown && otherGoodsBeside(page, names, finder)) return 'few names among those of other goods';
  const classes = finder.words.detergent.every(lettersOf(page, names)).length;
  if (classes >= fewestDeclared || (classes > 0 && isForHome(page, names, about, finder)))
    return 'classes of a detergent';
  if (n >= fewestSpecies && !finder.words.cosmetic.test(about) && areSpecies(names, finder))
    return 'species and no more';
  if (!headed && count(names, 'own') + count(names, 'plant') < fewestTelling) return 'no name tells';
  if (!headed && n < fewestUnheaded) return 'few names without a heading';
  if (!headed && names[0]!.after === 'mark') return 'begins in the middle of a line';
  return undefined;
}

const lettersOf = ({ low }: Page, names: Item[]) => low.slice(names[0]!.from, names.at(-1)!.to);

/** Whether another name stands alone on one of the next lines, behind what is told of this one. */
function isOneOfSeveral({ low, lines }: Page, { line }: Item, { kindOf }: Finder): boolean {
  const next = lines.slice(line + 1, line + 1 + linesBelow).map(({ from, to }) => low.slice(from, to).trim());
  return next.some((words) => words.length < besideLetters && isKnownKind(kindOf(words)));
}

/** Whether the same lines print what only other goods hold, right before or behind the names. */
function otherGoodsBeside({ low, lines }: Page, names: Item[], { words }: Finder): boolean {
  const [first, last] = [names[0]!, names.at(-1)!];
  const before = low.slice(Math.max(lines[first.line]!.from, first.from - besideLetters), first.from);
  const after = low.slice(last.to, Math.min(lines[last.line]!.to, last.to + besideLetters));
  return words.otherGoods.test(before) || words.otherGoods.test(after);
}

/** Plants by their two Latin names, or an everyday name with them: nothing is said of what is taken of them. */
const areSpecies = (names: Item[], { words }: Finder): boolean =>
  count(names, 'plant') * 2 >= names.length &&
  count(names, 'own') <= names.length * mostOwn &&
  names.every(({ name }) => !words.pressed.test(name.replace(/\([^)]*\)/g, ''))) &&
  !names.some(({ kind }) => kind === 'water');
