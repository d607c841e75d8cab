/** One name on the label, in the page's own letters. */
export type LabelPart = {
  raw: string;
  /** Offsets in the given text (UTF-16 units, `to` exclusive). */
  from: number;
  to: number;
  /** What to look up, best first: the whole name, then without its brackets, then its pieces. */
  names: string[];
  /** The share printed beside the name, in percent. */
  percent?: number;
  tail?: 'may-contain';
  /** Kits print several lists: amounts of different lists have nothing to do with one another. */
  list: number;
};

export type Label = {
  parts: LabelPart[];
  /** "Active / Inactive" headings: the order says nothing about amounts. */
  drugStyle: boolean;
};

const open = '([{（';
const close = ')]}）';

/** Label text → parts in order. Linear in the text; never throws. */
export function splitLabel(text: string): Label {
  const parts: LabelPart[] = [];
  let depth = 0;
  let start = 0;
  let tail: LabelPart['tail'];
  const take = (end: number) => {
    const piece = text.slice(start, end);
    const lead = /^[\s•·\-–—*:]*/u.exec(piece)![0].length;
    let raw = piece.slice(lead).replace(/[\s*†‡.]+$/u, '');
    const from = start + lead;
    start = end + 1;
    if (/^(?:may contain|peut contenir|\+\/-)/i.test(raw)) tail = 'may-contain';
    const printed = /\(?\s*(\d+(?:[.,]\d+)?)\s*%\s*\)?/.exec(raw);
    if (raw.length < 2 || !/\p{L}/u.test(raw)) return;
    raw = raw.slice(0, 200);
    const clean = raw.replace(/\(?\s*\d+(?:[.,]\d+)?\s*%\s*\)?/, ' ').trim();
    const bare = clean
      .replace(/\s*[([{][^)\]}]*[)\]}]/g, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    const inside = [...clean.matchAll(/[([{]([^)\]}]*)[)\]}]/g)].map(([, name]) => name!.trim());
    const names = [clean, bare, ...clean.split(/\s*\/\s*/), ...inside].filter((name) => name.length > 1);
    parts.push({
      raw,
      from,
      to: from + raw.length,
      names: [...new Set(names)],
      ...(printed ? { percent: Number(printed[1]!.replace(',', '.')) } : {}),
      ...(tail ? { tail } : {}),
      list: 0,
    });
  };
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]!;
    if (open.includes(letter)) depth = Math.min(depth + 1, 3);
    else if (close.includes(letter)) depth = Math.max(0, depth - 1);
    else if (letter === '\n' || letter === ';' || letter === '•' || (letter === ',' && depth === 0)) {
      if (letter === ',' && /\d/.test(text[i - 1] ?? '') && /\d/.test(text[i + 1] ?? '')) continue;
      depth = 0;
      take(i);
    }
  }
  take(text.length);
  return { parts, drugStyle: /\binactive ingredients?\b/i.test(text) };
}
