import type { PageText } from '../contract/messages.ts';
import { judge } from './evidence/judge.ts';
import type { JudgedRun } from './evidence/judged.ts';
import { reach } from './evidence/thresholds.ts';
import { explainedIn } from './explained.ts';
import type { Finder } from './finder.ts';
import { isOver } from './heading-over.ts';
import { beginsAnew, isBeside, joins, wrapped } from './joins.ts';
import { plainWordsOf } from './names/headings.ts';
import type { CutStep, Item, Stop } from './names/step.ts';
import { stepsOf } from './names/steps.ts';
import { isTitled, labelsAList, type OpenSet, titleIn } from './sets.ts';
import { type Page, pageOf } from './text/lines.ts';
import { around, blockAt, upFrom } from './text/page-text.ts';
import { placesToLook } from './text/places-to-look.ts';

const mostLines = 12_000; // of one page

const pauseEvery = 50; // lines

/** What is known of a page beside its letters. */
export type Setting = {
  /** The page's name, title and path, in lower case. */
  about: string;
  each?: ((judged: JudgedRun, page: Page) => void) | undefined;
};

/** Every part of a page's letters that reads as a cosmetic list, in order. Pauses between parts of the work. */
export function* findRuns(stream: PageText, finder: Finder, setting: Setting): Generator<void, JudgedRun[]> {
  const page = pageOf(stream);
  const found: JudgedRun[] = [];
  let budget = mostLines;
  for (const [first, last] of yield* placesToLook(page, finder)) {
    const steps: CutStep[] = [];
    for (let i = first; i <= last && budget > 0; i++, budget--) {
      yield* stepsOf(page, i, finder, steps);
      if (budget % pauseEvery === 0) yield;
    }
    yield;
    const explained = yield* explainedIn(page, steps, last, finder, setting.about);
    for (const judged of explained) setting.each?.(judged, page);
    const before = found.length;
    yield* runsOf(page, steps, finder, setting, found);
    const others = found
      .splice(before)
      .filter((one) => !explained.some(({ from, to }) => one.from < to && from < one.to));
    found.push(...[...others, ...explained].sort((a, b) => a.from - b.from));
  }
  return found;
}

/** Joins names into runs and keeps those that read as cosmetic lists. Pauses now and then. */
function* runsOf(
  page: Page,
  steps: CutStep[],
  finder: Finder,
  setting: Setting,
  found: JudgedRun[],
): Generator<void, void> {
  let run: Item[] = [];
  let lead: Stop | undefined; // the last stop that says what follows
  let outer: Stop | undefined; // the last heading on a line of its own: an inline stop speaks for its own line
  let kit: Stop | undefined; // the last plain heading: a label near it or near its list names one product of it
  let panels: { lead: Stop | undefined; around: unknown } | undefined; // what headed a list in one of several panels
  let title: Item | undefined; // the last run that is one unknown name alone on its line
  let proven = false; // a label that a word for ingredients stands in had its list
  const pending: OpenSet[] = []; // what other such labels lead to
  let muted = -1; // line whose rest is not looked at
  const flush = () => {
    if (run.length > 0) {
      const around = panelsAround(page.stream, run[0]!.from);
      if (around && around === panels?.around && isSpent(lead))
        lead = panels?.lead && { ...panels.lead, line: run[0]!.line };
      const { line } = run[0]!;
      if (isSpent(lead) && kit && line - kit.line < reach) {
        const own = labelsAList(page, run[0]!, finder)
          ? run[0]
          : isTitled(page, title, run, found.at(-1))
            ? title
            : undefined;
        if (own) lead = { ...kit, line, words: plainWordsOf(page.text.slice(own.from, own.to), finder) };
      }
      title = titleIn(page, run, finder);
      const labelled = lead?.heads && lead.stop === 'label' ? lead : undefined;
      const judged = judge(page, run, lead, finder, setting.about);
      if (judged) setting.each?.(judged, page);
      if (judged && !judged.isList && labelled) pending.push({ run, lead: labelled, at: found.length });
      if (judged?.isList) {
        if (labelled) proven = true;
        found.push(judged);
        if (around) panels = { lead, around };
        lead = lead && { ...lead, stop: 'label', words: '' };
        outer = lead;
        if (kit) kit = { ...kit, line: run.at(-1)!.line };
      }
    }
    run = [];
  };
  for (const [i, step] of steps.entries()) {
    if (i % pauseEvery === 0) yield;
    if (lead && !lead.inline && step.line > lead.line && isOver(page, lead.line, step.line, setting.about)) {
      flush();
      lead = outer = kit = undefined;
    }
    if ('stop' in step) {
      flush();
      const named = step.stop === 'label' && kit && step.line - kit.line < (kit.inline ? 1 : reach);
      const now: Stop = named ? { ...step, stop: kit!.stop } : step;
      if (!now.inline) outer = now;
      if ((now.stop === 'heading' || now.stop === 'teaser') && !named) kit = now;
      if (now.stop !== 'end') lead = now;
      else if (lead?.inline) lead = outer;
      muted = step.stop === 'end' || step.stop === 'denial' ? step.line : -1;
    } else if (step.line !== muted) {
      const whole = run.length > 0 ? wrapped(run.at(-1)!, step, finder) : undefined;
      if (beginsAnew(run, step, steps[i + 1]) || isBeside(page, run.at(-1), step)) {
        // what led to the one leads to the other
        const led = lead;
        flush();
        lead = led;
      }
      if (run.length > 0 && !whole && !joins(page, run, step, finder)) flush();
      if (run.length === 0 && lead?.inline && step.line > lead.line) lead = outer;
      if (whole) run[run.length - 1] = whole;
      else run.push(step);
    }
  }
  flush();
  // "Ingredients of the gel: … Ingredients of the mask: …": where one is a list, so are those headed like it
  for (const { run: names, lead: label, at } of proven ? pending.toReversed() : []) {
    const judged = judge(page, names, { ...label, stop: 'heading' }, finder, setting.about);
    if (judged) setting.each?.(judged, page);
    if (judged?.isList) found.splice(at, 0, judged);
  }
}

/** Whether a heading has had its list. */
const isSpent = (lead: Stop | undefined) => lead?.stop === 'label' && lead.words === '';

/** What holds the panels of tabs, for a place in one of them. */
function panelsAround(stream: PageText, at: number): unknown {
  for (const element of upFrom(stream, blockAt(stream, at), 4))
    if (element.role === 'tabpanel') return around(stream, element);
  return undefined;
}
