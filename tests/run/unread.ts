import type { Lookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

export type Unread = { name: string; times: number; close: string[] };

/** What is unread in a text of label lines, most frequent first. Each line is read as a list of its own. */
export function unreadIn(text: string, lookup: Lookup): { unread: Unread[]; mentions: number } {
  const times = new Map<string, number>();
  let mentions = 0;
  for (const line of text.split(/\r?\n/)) {
    for (const { raw, found } of readLabel(line, lookup).mentions) {
      mentions++;
      if (found.how === 'none') times.set(raw, (times.get(raw) ?? 0) + 1);
    }
  }
  const unread = [...times]
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .map(([name, count]) => ({ name, times: count, close: lookup.close(name, 2) }));
  return { unread, mentions };
}
