import type { Reading, ReadOptions } from '../../core/reading/reading.ts';

export type AskedReading = { text: string } & ReadOptions;

const patience = 5000; // ms after which what could not be read is asked for again

/**
 * Readings by what was asked: known ones at once; all that a drawing lacked is asked for in one message. What
 * failed is said once and not asked for again at once, however often it is drawn; `failing` while it stands so,
 * and `again` asks for it now.
 */
export function readingCache(
  read: (asked: AskedReading[]) => Promise<Reading[]>,
  arrived: () => void,
  failed: (problem: unknown) => void,
) {
  const known = new Map<string, Reading>();
  const pending = new Set<string>();
  /** What failed and waits: `true` where the user asks for it before its time. */
  const waiting = new Set<(pressed: boolean) => void>();
  let failing = false;
  let next: AskedReading[] = [];
  const wait = () =>
    new Promise<boolean>((ended) => {
      const timer = setTimeout(() => end(false), patience);
      const end = (pressed: boolean) => {
        clearTimeout(timer);
        waiting.delete(end);
        ended(pressed);
      };
      waiting.add(end);
    });
  const send = async () => {
    const asked = next;
    next = [];
    let draw = true;
    try {
      const readings = await read(asked);
      asked.forEach((each, i) => {
        const reading = readings[i];
        if (reading) known.set(JSON.stringify(each), reading);
      });
      failing = false;
    } catch (problem) {
      failing = true;
      failed(problem);
      draw = await wait();
    }
    for (const each of asked) pending.delete(JSON.stringify(each));
    if (draw) arrived();
  };
  const reading = (text: string, as: ReadOptions = {}): Reading | undefined => {
    const asked: AskedReading = { text, ...as };
    const key = JSON.stringify(asked);
    const reading = known.get(key);
    if (reading || pending.has(key)) return reading;
    pending.add(key);
    if (next.push(asked) === 1) queueMicrotask(send);
    return undefined;
  };
  const again = () => {
    failing = false;
    for (const end of [...waiting]) end(true);
    arrived();
  };
  return { reading, failing: () => failing, again };
}
