import type { PageText } from '../contract/messages.ts';
import { goesOn } from './headings.ts';
import { isWater, judge, reach, type Segment } from './judge.ts';
import type { Item, Step, Stop } from './names-in.ts';
import { around, blockAt } from './page-text.ts';
import { type Page, pageOf, placesToLook } from './places-to-look.ts';
import { stepsOf } from './steps.ts';

const mostLines = 12_000;

/** Every part of a page's letters that reads as a cosmetic list, in order. */
export function findSegments(stream: PageText): Segment[] {
  const page = pageOf(stream);
  const found: Segment[] = [];
  let budget = mostLines;
  for (const [first, last] of placesToLook(page)) {
    const steps: Step[] = [];
    for (let i = first; i <= last && budget > 0; i++, budget--) stepsOf(page, i, steps);
    segmentsOf(page, steps, found);
  }
  return found;
}

const isKnown = ({ kind }: Item) => kind === 'cosmetic' || kind === 'likely';

/** Joins names into segments and keeps those that read as cosmetic lists. */
function segmentsOf(page: Page, steps: Step[], found: Segment[]): void {
  let run: Item[] = [];
  let lead: Stop | undefined; // the last stop that says what follows
  let outer: Stop | undefined; // the last heading on a line of its own: an inline stop speaks for its own line
  let kit: Stop | undefined; // the last plain heading: a label near it or near its list names one product of it
  let muted = -1; // line whose rest is not looked at
  const flush = () => {
    const segment = judge(page, run, lead);
    if (segment) {
      found.push(segment);
      lead = lead && { ...lead, stop: 'label', words: '' };
      outer = lead;
      if (kit) kit = { ...kit, line: run.at(-1)!.line };
    }
    run = [];
  };
  for (const step of steps) {
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
      if (run.length > 0 && !joins(page, run, step)) flush();
      if (run.length === 0 && lead?.inline && step.line > lead.line) lead = outer;
      run.push(step);
    }
  }
  flush();
}

/** Whether the list goes on with `next`. */
function joins({ stream, text, lines }: Page, run: Item[], next: Item): boolean {
  const last = run.at(-1)!;
  if (run.length > 3 && next.after !== 'mark' && isWater(next) && run.some(isWater)) return false;
  const down = next.line - last.line;
  if (down === 0) return true;
  if (down > 2) return false;
  if (/^[)*\s]*[,;•·/|&]|[,;•·/|&]\s*$/.test(text.slice(last.to, next.from)) || goesOn.test(next.name))
    return true;
  // several names in a line, marks within brackets aside
  const many = ({ line }: Item) => {
    const { from, to } = lines[line]!;
    return (
      text
        .slice(from, to)
        .replace(/\([^)]*\)/g, '')
        .split(/[,;•·]/).length > 2
    );
  };
  const [lastMany, nextMany] = [many(last), many(next)];
  if ((nextMany && isWater(next)) || !sameKin(stream, last.from, next.from)) return false;
  if (!lastMany) return !nextMany || run.filter(isKnown).length * 2 > run.length;
  return nextMany
    ? isKnown(next)
    : down === 1 && (next.kind === 'cosmetic' || /acid|water|glycerin/.test(next.name));
}

/** Whether two places stand in one block, in sibling blocks, or in the same place of sibling blocks. */
function sameKin(stream: PageText, a: number, b: number): boolean {
  let first = blockAt(stream, a);
  let second = blockAt(stream, b);
  for (let level = 0; level < 4 && first && second; level++) {
    if (first === second) return true;
    if (first.tag !== second.tag) return false;
    first = around(stream, first);
    second = around(stream, second);
  }
  return false;
}
