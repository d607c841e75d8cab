import type { Remembered } from './remembered.ts';

/** One part of all that is remembered: the products, the log, the settings… */
export type PartName = keyof Remembered;
const partNames = ['heads', 'products', 'routines', 'log', 'sites', 'readAs', 'settings'] as const;

/** What was sent of it, by its stamp: a part with the same stamp is the same. */
export type Stamps = { [P in PartName]?: string };

/** What is remembered, less the parts that whoever asks has already. */
export type RememberedParts = { stamps: Stamps; parts: Partial<Remembered> };

const isSame = (a: object, b: object) => {
  const [ours, theirs] = [Object.entries(a), Object.entries(b)];
  return (
    ours.length === theirs.length &&
    ours.every(([key, value], at) => theirs[at]![0] === key && theirs[at]![1] === value)
  );
};

/** The same, with every part that did not change being the very one it was before. */
export function keepingParts(now: Remembered, before: Remembered | undefined): Remembered {
  if (!before) return now;
  const kept = partNames.filter((part) => isSame(now[part], before[part]));
  return { ...now, ...Object.fromEntries(kept.map((part) => [part, before[part]])) };
}

/** Stamps parts as they are met, in words of its own: no two makers of stamps agree by chance. */
export function stampParts(maker: string) {
  const stamps = new WeakMap<object, string>();
  let nth = 0;
  const stampOf = (part: object) => {
    if (!stamps.has(part)) stamps.set(part, `${maker} ${nth++}`);
    return stamps.get(part)!;
  };
  return (remembered: Remembered, has: Stamps): RememberedParts => {
    const now = partNames.map((part) => [part, stampOf(remembered[part])] as const);
    const news = now.filter(([part, stamp]) => has[part] !== stamp);
    return {
      stamps: Object.fromEntries(now),
      parts: Object.fromEntries(news.map(([part]) => [part, remembered[part]])),
    };
  };
}
