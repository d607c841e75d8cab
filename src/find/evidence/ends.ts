import type { Item } from '../names/step.ts';
import type { Page } from '../text/lines.ts';

/** Offsets of a list's letters: without an article's number before it and a code after it, with its full stop or footnote mark. */
export function endsOf({ text, low }: Page, first: Item, last: Item): { from: number; to: number } {
  const head = low.slice(first.from, Math.min(first.to, first.from + 80));
  const number =
    /^[\u200b-\u200f\ufeff#]{0,4}(?:[a-z]{0,3}\d{4,}[\w/]{0,12}(?: [a-z]?\d{1,3})?\s?[-–•:]?\s+(?=[a-z]))?/.exec(
      head,
    )!;
  const tailFrom = Math.max(first.from, last.from);
  const tail = low.slice(tailFrom, last.to);
  const code = tail.search(/[\s(]{1,3}(?:f\.?i\.?l\.?|code|lot|batch|ref|formula)[\s.:#][^,]{0,80}$/);
  const to = code > 0 ? tailFrom + code : last.to;
  const marks = /^(?:[*)\]†‡]{0,3}\s?\.+|[*)\]†‡]{0,3})/.exec(
    text.slice(to, to + 4).replace(/\n[\s\S]*/, ''),
  )!;
  // "1. Aqua 2. Glycerin": the first number belongs to the others
  const one = /(?:^|[\s:])(1[.)]\s+|①\s*)$/.exec(text.slice(Math.max(0, first.from - 6), first.from));
  const from = one ? first.from - one[1]!.length : first.from + number[0].length;
  return { from, to: to + marks[0].length };
}
