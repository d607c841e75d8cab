// What a page's lists are held against: every name there, and what else was taken for one.
import { limits } from '../../../dictionary/index.ts';
import { levelLetters } from '../../../src/core/label/letters.ts';
import { createRemarks } from '../../../src/core/label/no-names/remarks.ts';
import { splitLabel } from '../../../src/core/label/split-label.ts';
import { findLists } from '../../../src/page/find-lists.ts';
import { gate } from '../../../src/page/read/gate.ts';

const remarks = createRemarks(limits.labelWords);
const bare = (text: string) =>
  levelLetters(text)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');

export type Score = { found: boolean; whole: boolean; texts: string[] };

/** `found`: each wanted list is met by half of its names. `whole`: all names, at most one stray, no list too many. */
export function scored(document: Document, body: string, wanted: string[][], also = 0): Score {
  document.body.innerHTML = body;
  const texts = gate(document) ? findLists(document).map(({ text }) => text) : [];
  const results = wanted.map((names) => {
    const keys = names.map(bare);
    const hits = texts.map((text) => keys.filter((key) => bare(text).includes(key)).length);
    const most = Math.max(0, ...hits);
    const text = texts[hits.indexOf(most)];
    const all = keys.join('');
    const strays = text
      ? splitLabel(text, remarks).parts.filter(
          ({ raw, within }) => within === undefined && !all.includes(bare(raw)),
        ).length
      : 0;
    return { met: most * 2 >= names.length && most > 0, whole: most === names.length && strays <= 1 };
  });
  return {
    found: results.every(({ met }) => met),
    whole: results.every(({ whole }) => whole) && texts.length <= wanted.length + also,
    texts,
  };
}
