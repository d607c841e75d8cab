import type { Finder } from '../finder.ts';
import { isGlued, isSoft } from '../names/cut.ts';
import { plainWordsOf } from '../names/headings.ts';
import type { Item, Stop } from '../names/step.ts';
import type { Page } from '../text/lines.ts';
import { blockAt } from '../text/page-text.ts';
import { endsOf } from './ends.ts';
import { formSays } from './form-says.ts';
import type { JudgedRun } from './judged.ts';
import { leadOf, leadSays } from './lead-says.ts';
import { namesSay } from './names-say.ts';
import { isForHome, pageSays } from './page-says.ts';
import { whyNot } from './rules-out.ts';
import { bar } from './thresholds.ts';

/** Whether a run of names reads as a cosmetic list, and where it begins and ends. `lead` stands before it. */
export function judge(
  page: Page,
  run: Item[],
  lead: Stop | undefined,
  finder: Finder,
  about: string,
): JudgedRun | undefined {
  const names = withoutStrangers(page, run, lead);
  const [first, last] = [names[0], names.at(-1)];
  if (!first || !last) return undefined;
  const stop = leadOf(page, names, lead, finder);
  const evidence = [
    ...namesSay(names),
    ...leadSays(stop, about),
    ...formSays(page, names, stop, run, finder),
    ...pageSays(page, names, about, finder),
  ];
  const points = Math.round(100 * evidence.reduce((sum, one) => sum + one.points, 0)) / 100;
  const not = whyNot(page, names, stop, finder, about);
  const { from, to } = endsOf(page, first, last);
  return {
    isList: !not && points >= bar,
    names,
    evidence,
    points,
    ...(not ? { not } : {}),
    from,
    to,
    soft: isSoft(page.text.slice(from, to)),
    ...(isGlued(page.text.slice(from, to))
      ? { parts: names.map((name) => ({ from: name.from, to: name.to })) }
      : {}),
    headed: stop?.stop === 'heading' ? (stop.inline ? 'inline' : 'line') : undefined,
    forHome: isForHome(page, names, about, finder),
    label: stop?.words || lineBefore(page, first.line, finder),
  };
}

/** Unknown names on lines of their own around a list are the shop's, not the list's. */
function withoutStrangers({ stream, text }: Page, run: Item[], lead: Stop | undefined): Item[] {
  let names = run;
  const unknown = (i: number) => names[i]!.kind === 'other' || names[i]!.kind === 'foreign';
  const strange = (i: number) =>
    names.length > 1 &&
    unknown(i) &&
    names[i - 1]?.line !== names[i]!.line &&
    names[i + 1]?.line !== names[i]!.line;
  const block = run[0] && blockAt(stream, run[0].from);
  // an item of a list, or an element of the shop's own for each name
  const inItems = block && /^(?:li|dd|td)$|-/.test(block.tag);
  // the line right under a heading stays where more lines of one name follow it
  const oneALine =
    inItems || (run[1] && run[2] && run[1].line !== run[2].line && block === blockAt(stream, run[1].from));
  while (
    names.length > 1 &&
    ((strange(0) && names[0]!.line - (lead?.line ?? -9) > (oneALine ? 1 : 0)) ||
      // "Wash – Aqua, …": a product's name before a dash
      (unknown(0) && names[1]!.after === 'dash' && names[0]!.after !== 'mark'))
  )
    names = names.slice(1);
  const numbered = ({ from }: Item) =>
    /(?:^|\n)\s*\d{1,3}[.)]\s+$/.test(text.slice(Math.max(0, from - 8), from));
  while (
    names.length > 1 &&
    unknown(names.length - 1) &&
    !numbered(names.at(-1)!) &&
    (names.at(-1)!.after === 'stop' || (strange(names.length - 1) && !inItems))
  )
    names = names.slice(0, -1);
  return names;
}

/** A short line right before a list may be the name of its product. */
function lineBefore({ text, lines }: Page, line: number, finder: Finder): string {
  const before = lines[line - 1];
  const words = before && before.to - before.from < 80 ? text.slice(before.from, before.to).trim() : '';
  return /[.!?,;]/.test(words) ? '' : plainWordsOf(words, finder);
}
