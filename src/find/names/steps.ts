import type { Finder } from '../finder.ts';
import type { Page } from '../text/lines.ts';
import { type Cut, cutsOf } from './cut.ts';
import { isBatch, longestName, stepsOfCut } from './cut-steps.ts';
import { headingStops, type Placed } from './headings.ts';
import { isKnownKind } from './kinds.ts';
import type { CutStep, Stop } from './step.ts';

const mostSteps = 4000; // of one place: longer lists than any label's
const pauseEvery = 100; // names
const namesAsked = 3; // names behind a stray that are looked at
const longestLine = 400_000; // letters of one line that are read

/** One line as names and stops, in order. Pauses now and then. */
export function* stepsOf(page: Page, line: number, finder: Finder, steps: CutStep[]): Generator<void, void> {
  const { from, to } = page.lines[line]!;
  const end = Math.min(to, from + longestLine);
  function* names(at: number, until: number) {
    const cuts = cutsOf(page, at, until);
    let denies = false;
    for (const [i, cut] of cuts.entries()) {
      if (steps.length >= mostSteps) return;
      if (i % pauseEvery === pauseEvery - 1) yield;
      if (leadsByDash(page, cut, cuts[i + 1], finder)) {
        const words = page.text.slice(cut.from, cut.to);
        steps.push({ stop: 'label', line, words, inline: true });
        continue;
      }
      denies = cut.after === 'mark' ? denies : beginsDenial(page, cut, finder);
      const found = stepsOfCut(page, cut, line, finder, denies);
      const last = found.at(-1);
      const ends = last && 'stop' in last && last.stop === 'end';
      if (ends && cut.after === 'mark' && namesGoOn(page, cuts.slice(i + 1, i + 1 + namesAsked), finder))
        steps.push(...asNames(page, cut, line, found));
      else steps.push(...found);
    }
  }
  let at = from;
  for (const placed of headingStops(page, { from, to: end }, finder)) {
    if (placed.before) yield* names(at, placed.from);
    steps.push(stopOf(placed, line));
    at = placed.to;
  }
  yield* names(at, end);
}

/** "Batch 3412 – Water, …": of which bottles the list behind the dash is. */
const leadsByDash = ({ low }: Page, { from, to, after }: Cut, next: Cut | undefined, finder: Finder) =>
  after === 'line' &&
  next?.after === 'dash' &&
  isBatch(low.slice(from, to), finder) &&
  isKnownKind(finder.kindOf(low.slice(next.from, next.to)));

const beginsDenial = ({ low }: Page, { from, to }: Cut, { words }: Finder): boolean =>
  words.denial.begins(low.slice(from, Math.min(to, from + longestName)));

/** Whether names stand behind a stretch that is none: then it is a stray among them, and the list goes on. */
function namesGoOn({ low }: Page, next: Cut[], { kindOf }: Finder): boolean {
  const known = next.filter(
    ({ from, to }) => to - from <= longestName && isKnownKind(kindOf(low.slice(from, to))),
  );
  return (
    next.length > 0 && known.length >= Math.min(2, next.length) && next.every(({ after }) => after === 'mark')
  );
}

function asNames({ low }: Page, { from, to, after }: Cut, line: number, found: CutStep[]): CutStep[] {
  const items = found.filter((step) => !('stop' in step));
  return items.length > 0 ? items : [{ from, to, line, name: low.slice(from, to), kind: 'other', after }];
}

const stopOf = ({ stop, words, inline, heads = false, to }: Placed, line: number): Stop => ({
  stop,
  line,
  words,
  inline,
  heads,
  to,
});
