import { anyOf, type LabelWords } from './label-words.ts';

/** Words that head a part of a label, and what follows them. */
export type Heading = 'list' | 'active' | 'inactive' | 'key' | 'contains' | 'tail' | 'not-in' | 'note';

const needsIngredients: Heading[] = ['active', 'inactive', 'key'];
const longestHeading = 80; // letters before its colon

/** A share of which there is less: "less than 2 %", "1 % or less". */
const littleOf = ({ below, orLess }: LabelWords) =>
  `(?:(?:${anyOf(below)}|[<≤])\\s*\\d{1,2}(?:[.,]\\d)?\\s*%|\\d{1,2}(?:[.,]\\d)?\\s*% ${anyOf(orLess)})`;

/** What tells the headings of a label by their words. */
export function headings(words: LabelWords) {
  const ingredients = anyOf(words.headings);
  const may = `(?:${anyOf(words.may)}|\\+\\s*\\/\\s*[-–−])`;
  const mayOften = `${may}(?:\\s*[/(]\\s*${may}\\)?)*`;
  const leftOut = anyOf(words.leftOut);
  const full = anyOf(words.full);

  const kinds: [Heading, RegExp][] = [
    ['not-in', new RegExp(`(?:^|\\s)${leftOut}(?:$|[\\s:])`, 'iu')],
    ['tail', new RegExp(may, 'iu')],
    ['inactive', word(anyOf(words.inactive))],
    ['active', word(anyOf(words.active))],
    ['key', word(anyOf(words.key))],
    ['contains', new RegExp(`^${anyOf(words.contain, words.allergens)}$`, 'iu')],
    ['note', new RegExp(`^${anyOf(words.notes)}(?![\\p{L}\\d-])`, 'iu')],
    ['list', new RegExp(`(?:^|[\\s/(])${ingredients}(?:$|[\\s/)])`, 'iu')],
  ];
  const ingredientWord = new RegExp(ingredients, 'iu');
  const fullWord = word(full);

  // "Contains less than 2% of:", "< 1 %:", "1% or less of the following:"; what goes on is the list.
  const littleStart = new RegExp(`^(?:${anyOf(words.contain)} )?${littleOf(words)}[^:,;]{0,40}:\\s*`, 'iu');
  const tailStart = new RegExp(`^[\\s:]*${mayOften}[\\s:)]*`, 'iu');
  const tailWithin = new RegExp(`^(?:[([]\\s*)?${mayOften}[^:,]{0,20}:`, 'iu');
  const leftOutStart = new RegExp(`^(?:100 ?% )?${leftOut}\\s`, 'iu');
  const listStart = new RegExp(
    `^(?:(?:${full}|${anyOf(words.active)}) )*${ingredients}(?:\\s*/\\s*${ingredients})*(?: ${anyOf(words.lists)})?(?![\\p{L}-])[\\s.–—-]*`,
    'iu',
  );
  // "SHAMPOO INGREDIENTS" on a line of its own.
  const listLine = new RegExp(`^(?:[\\p{L}'’&][\\p{L}'’&-]*\\s+){1,4}${ingredients}\\s*$`, 'iu');
  const saysNoList = new RegExp(
    `^${ingredients} (?:${anyOf(words.lists)}s? )?${anyOf(words.ofList)}(?!\\p{L})`,
    'iu',
  );

  /** What the words before a colon head, if they head anything a label has. */
  function headingOf(before: string): Heading | undefined {
    const text = before.replace(/[*_"“”•>[\]{}]/g, ' ').trim();
    if (!text || text.length > longestHeading) return undefined;
    for (const [kind, test] of kinds)
      if (test.test(text)) {
        if (kind === 'key' && fullWord.test(text)) return 'list';
        const bare = text.split(/\s+/).length <= 2;
        if (needsIngredients.includes(kind) && !ingredientWord.test(text) && !bare) continue;
        return kind;
      }
    return undefined;
  }

  /** Letters of a heading over what there is little of: the list goes on after it. */
  const littleIn = (text: string): number => littleStart.exec(text)?.[0].length ?? 0;

  /** A heading without a colon at the start of a piece, and how many letters it takes. */
  function leadingHeading(text: string): { kind: Heading; length: number } | undefined {
    const tail = tailStart.exec(text);
    if (tail) return { kind: 'tail', length: tail[0].length };
    const less = littleIn(text);
    if (less) return { kind: 'contains', length: less };
    const without = leftOutStart.exec(text);
    if (without) return { kind: 'not-in', length: without[0].length };
    if (saysNoList.test(text)) return undefined;
    const list = listStart.exec(text) ?? listLine.exec(text);
    if (!list) return undefined;
    return { kind: headingOf(list[0].trim()) ?? 'list', length: list[0].length };
  }

  return {
    headingOf,
    littleIn,
    leadingHeading,

    startsTail: (text: string) => tailStart.test(text),

    /** "… Tocopherol May contain: CI 77891": what may be in it, without a stop before it. */
    opensTail: (text: string) => tailWithin.test(text),

    /** A sentence about the list: "Ingredients may change". */
    saysNoList: (text: string) => saysNoList.test(text),

    /** Whether a line opens with a heading: `Words:` before any comma, or one of the known words. */
    startsHeading(line: string): boolean {
      const colon = /^([^,;:(]{2,80}):(?!\d|\/\/)/.exec(line);
      return colon !== null || leadingHeading(line) !== undefined;
    },
  };
}

const word = (source: string) => new RegExp(`(?<![\\p{L}\\d])${source}(?![\\p{L}\\d])`, 'iu');
