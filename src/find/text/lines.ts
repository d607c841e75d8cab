import type { PageText } from '../../contract/messages.ts';
import { fold } from './letters.ts';

/** A page's letters, folded for comparing, and its lines. */
export type Page = { stream: PageText; text: string; low: string; lines: Line[] };
export type Line = { from: number; to: number };

export function pageOf(stream: PageText): Page {
  const text = withoutShortcodes(stream.text);
  const lines: Line[] = [];
  for (let from = 0; from <= text.length; from = lines.at(-1)!.to + 1) {
    const next = text.indexOf('\n', from);
    lines.push({ from, to: next < 0 ? text.length : next });
  }
  return { stream, text, low: fold(text), lines };
}

/** "[tab title="Ingredients"]Aqua[/tab]": marks of another system that nobody made into elements. */
const shortcode = /\[\/?([a-z][a-z_]{0,20})((?: [a-z_]{1,20}=(?:"[^"\n]{0,80}"|[^\s"\]]{1,40})){0,8}) ?\]/gi;
const inline = /^(?:b|i|u|em|strong|color|size|url)$/i;

/**
 * The same letters with edges in the place of such marks, where a page closes any: what is in quotes stands in a line
 * of its own, all else of them is blank. Offsets stay.
 */
function withoutShortcodes(text: string): string {
  if (!text.includes('[/')) return text;
  return text.replace(shortcode, (mark, name: string, given: string) => {
    if (inline.test(name)) return '\v'.padEnd(mark.length, ' ');
    if (!given && !mark.startsWith('[/')) return mark; // "[nano]"
    const quoted = /="([^"]*)"/.exec(mark);
    if (!quoted) return '\n'.padEnd(mark.length, ' ');
    const before = '\n'.padEnd(quoted.index + 2, ' ');
    return `${before}${quoted[1]}\n`.padEnd(mark.length, ' ');
  });
}
