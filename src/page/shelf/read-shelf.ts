import type { Manners, Unread } from '../../contract/shelf.ts';
import { type Asked, askShop, type Line } from './ask-shop.ts';
import { askRobots, type Robots } from './robots.ts';

/** What reading a shelf needs from outside. */
export type ShelfLine = Line & {
  /** Settles after so many milliseconds, or at once when the signal ends. */
  wait(ms: number, signal: AbortSignal): Promise<void>;
  /** Reads a page that came; answers why not when it holds no list of this product. */
  take(address: string, came: { page: string; address: string }): Promise<Unread | undefined>;
};

export type Progress = {
  /** Addresses by how they stand. */
  reading: string[];
  read: string[];
  failed: Map<string, Unread>;
  /** Not asked for yet in this press. */
  waiting: string[];
  /** Why the press ended before its last page: the reader, or the shop until a moment (ms since 1970). */
  ended?: { why: 'cancelled' } | { why: 'shop-busy'; again: number };
};

/** What may be asked again by a later press; everything else had its answer. */
const mayAskAgain: ReadonlySet<Unread> = new Set(['offline', 'too-slow', 'cancelled', 'shop-busy']);

/**
 * Reads products of a shelf by asking the shop for their pages: so many a press, so many at a time, so far apart.
 * One address is asked once; a later press goes on where the one before ended.
 */
export function createShelfReading(
  origin: string,
  manners: Manners,
  line: ShelfLine,
  tell: (progress: Progress) => void,
) {
  const read: string[] = [];
  const failed = new Map<string, Unread>();
  const reading = new Set<string>();
  let waiting: string[] = [];
  let robots: Promise<Robots> | undefined;
  let running: AbortController | undefined;
  let notBefore = 0;

  const say = (ended?: Progress['ended']) =>
    tell({
      reading: [...reading],
      read: [...read],
      failed: new Map(failed),
      waiting: [...waiting],
      ...(ended && { ended }),
    });

  const isOver = (address: string) =>
    read.includes(address) ||
    reading.has(address) ||
    (failed.has(address) && !mayAskAgain.has(failed.get(address)!));

  /** Asks for those of the addresses that had no answer yet, in their order; settles when the press is over. */
  async function press(addresses: readonly string[]): Promise<void> {
    if (running) return;
    if (line.now() < notBefore) return say({ why: 'shop-busy', again: notBefore });
    const stop = new AbortController();
    running = stop;
    waiting = [...new Set(addresses)].filter((address) => !isOver(address)).slice(0, manners.perPress);
    for (const address of waiting) failed.delete(address);
    say();
    let busy: number | undefined;
    const later = (again: number | undefined) => {
      if (again === undefined) return;
      busy = Math.max(busy ?? 0, again);
      notBefore = Math.min(busy, line.now() + manners.waitAtMostMinutes * 60_000);
    };

    if (waiting.length > 0) {
      robots ??= askRobots(origin, manners, line, stop.signal);
      const { allows, again } = await robots;
      // A press ended midway, or a shop that is busy, has not said anything about its rules.
      if (again !== undefined || stop.signal.aborted) robots = undefined;
      later(again);
      if (!stop.signal.aborted && busy === undefined) {
        for (const address of waiting.filter((each) => !allows(each))) failed.set(address, 'robots');
        waiting = waiting.filter(allows);
      }
    }

    /** When the next request may start: requests take their turn, and keep their distance. */
    let next = line.now() + manners.gapMs;
    async function hand(): Promise<void> {
      while (waiting.length > 0 && !stop.signal.aborted && busy === undefined) {
        const address = waiting.shift()!;
        reading.add(address);
        const start = next;
        next = Math.max(next, line.now()) + manners.gapMs;
        await line.wait(Math.max(0, start - line.now()), stop.signal);
        if (stop.signal.aborted || busy !== undefined) {
          reading.delete(address);
          waiting.unshift(address);
          return;
        }
        say();
        const came = await askShop(address, manners, line, stop.signal);
        const why = await outcomeOf(address, came);
        if ('again' in came) later(came.again);
        reading.delete(address);
        if (why) failed.set(address, why);
        else read.push(address);
        say();
      }
    }
    await Promise.all(Array.from({ length: manners.atOnce }, hand));
    running = undefined;
    say(
      stop.signal.aborted
        ? { why: 'cancelled' }
        : busy === undefined
          ? undefined
          : { why: 'shop-busy', again: notBefore },
    );
  }

  async function outcomeOf(address: string, came: Asked): Promise<Unread | undefined> {
    return 'page' in came ? line.take(address, came) : came.why;
  }

  return {
    press,
    /** Ends the press that runs; what came until then stays. */
    cancel: () => running?.abort(),
    isRunning: () => running !== undefined,
    /** Those of the addresses that a press now would ask for. */
    left: (addresses: readonly string[]) => [...new Set(addresses)].filter((address) => !isOver(address)),
  };
}
