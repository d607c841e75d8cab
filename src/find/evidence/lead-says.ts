import type { Finder } from '../finder.ts';
import type { Item, Stop } from '../names/step.ts';
import { fold } from '../text/letters.ts';
import type { Page } from '../text/lines.ts';
import { blockAt, upFrom } from '../text/page-text.ts';
import type { Evidence } from './judged.ts';
import { leadPoints, reach } from './thresholds.ts';

export function leadSays(stop: Stop | undefined, about: string): Evidence[] {
  const kind = stop && stop.stop !== 'end' ? stop.stop : 'none';
  const what = isProduct(stop, about) ? 'productName' : kind;
  return [
    { what: `led by ${what}${stop?.words ? ` “${stop.words}”` : ''}`, count: 1, points: leadPoints[what] },
  ];
}

/** Whether a label is the name of the product the page shows. */
export const isProduct = (stop: Stop | undefined, about: string): boolean =>
  stop?.stop === 'label' && stop.words.length > 3 && about.includes(fold(stop.words.replace(inBrackets, '')));

const inBrackets = /\s?\([^()]{1,40}\)?$/; // its size

/** What leads to a list: the stop near before it, or the label of its panel, dialog or cell. */
export function leadOf(
  { stream }: Page,
  names: Item[],
  lead: Stop | undefined,
  finder: Finder,
): Stop | undefined {
  const first = names[0]!;
  const near = lead && first.line - lead.line < reach ? lead : undefined;
  const block = blockAt(stream, first.from);
  if ((near && near.stop !== 'label') || !block) return near;
  const words = ([...upFrom(stream, block, 5)].find(({ label }) => label)?.label ?? '').toLowerCase();
  const kind = finder.words.denial.test(words)
    ? 'denial'
    : finder.words.teaser.test(words)
      ? 'teaser'
      : 'heading';
  return kind === 'denial' || finder.heads(words)
    ? { stop: kind, line: first.line, words: '', inline: false }
    : near;
}
