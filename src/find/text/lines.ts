import type { PageText } from '../../contract/messages.ts';
import { fold } from './letters.ts';

/** A page's letters, folded for comparing, and its lines. */
export type Page = { stream: PageText; text: string; low: string; lines: Line[] };
export type Line = { from: number; to: number };

export function pageOf(stream: PageText): Page {
  const { text } = stream;
  const lines: Line[] = [];
  for (let from = 0; from <= text.length; from = lines.at(-1)!.to + 1) {
    const next = text.indexOf('\n', from);
    lines.push({ from, to: next < 0 ? text.length : next });
  }
  return { stream, text, low: fold(text), lines };
}
