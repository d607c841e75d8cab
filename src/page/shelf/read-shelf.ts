import type { EndedWhy, Manners, UnreadReason } from '../../contract/shelf.ts';
import { askShop, type Network, type ShopAnswer } from './ask-shop.ts';
import { askRobots, type Robots } from './robots.ts';

/** What reading a shelf needs from outside. */
export type ShelfNetwork = Network & {
  /** Settles after so many milliseconds, or at once when the signal ends. */
  wait(ms: number, signal: AbortSignal): Promise<void>;
  /** Reads a page that came; answers why not when it holds no list of this product. */
  take(address: string, came: { page: string; address: string }): Promise<UnreadReason | undefined>;
};

/** Why a press ended before its last page: the user, the network, our own background, or the shop until a moment (ms since 1970). */
export type Ended = { why: Exclude<EndedWhy, 'shop-busy'> } | { why: 'shop-busy'; again: number };

export type Progress = {
  /** Addresses by how they stand. */
  reading: string[];
  read: string[];
  failed: Map<string, UnreadReason>;
  /** Of the press that runs, or ran last: products that had their answer, of how many. */
  done: number;
  of: number;
  /** Not asked for yet in this press. */
  waiting: string[];
  ended?: Ended;
};

/** What may be asked again by a later press; everything else had its answer. */
const mayAskAgain: ReadonlySet<UnreadReason> = new Set(['offline', 'too-slow', 'cancelled', 'shop-busy']);

/** So many pages in a row that could not be reached: it is not the pages. */
const lostAfter = 3;

/**
 * Reads products of a shelf by asking the shop for their pages: so many a press, so many at a time, so far apart.
 * One address is asked once; a later press goes on where the one before ended.
 */
export function createShelfReading(
  origin: string,
  manners: Manners,
  network: ShelfNetwork,
  tell: (progress: Progress) => void,
) {
  const read: string[] = [];
  const failed = new Map<string, UnreadReason>();
  const reading = new Set<string>();
  let waiting: string[] = [];
  let of = 0;
  let robots: Promise<Robots> | undefined;
  let running: AbortController | undefined;
  let notBefore = 0;

  const say = (ended?: Ended) =>
    tell({
      reading: [...reading],
      read: [...read],
      failed: new Map(failed),
      done: of - waiting.length - reading.size,
      of,
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
    if (network.now() < notBefore) return say({ why: 'shop-busy', again: notBefore });
    const stop = new AbortController();
    running = stop;
    waiting = [...new Set(addresses)].filter((address) => !isOver(address)).slice(0, manners.perPress);
    of = waiting.length;
    for (const address of waiting) failed.delete(address);
    say();
    let ended: Ended | undefined;
    const isOff = () => stop.signal.aborted || ended !== undefined;
    const busyUntil = (again: number) => {
      notBefore = Math.max(
        ended?.why === 'shop-busy' ? notBefore : 0,
        Math.min(again, network.now() + manners.waitAtMostMinutes * 60_000),
      );
      ended = { why: 'shop-busy', again: notBefore };
    };

    if (waiting.length > 0) {
      robots ??= askRobots(origin, manners, network, stop.signal);
      const { allows, again, why } = await robots;
      // A press ended midway, or a shop that is busy or out of reach, has not said anything about its rules.
      if (again !== undefined || why || stop.signal.aborted) robots = undefined;
      if (again !== undefined) busyUntil(again);
      else if (why) ended = { why };
      if (!isOff()) {
        for (const address of waiting.filter((each) => !allows(each))) failed.set(address, 'robots');
        waiting = waiting.filter(allows);
      }
    }

    /** Requests take their turn: each keeps its distance from when the one before really began. */
    let began = network.now();
    let turn = Promise.resolve();
    const mayBegin = () => {
      turn = turn.then(async () => {
        await network.wait(Math.max(0, began + manners.gapMs - network.now()), stop.signal);
        began = network.now();
      });
      return turn;
    };
    let unreached: string[] = [];
    async function hand(): Promise<void> {
      while (waiting.length > 0 && !isOff()) {
        const address = waiting.shift()!;
        reading.add(address);
        await mayBegin();
        if (isOff()) {
          reading.delete(address);
          waiting.unshift(address);
          return;
        }
        say();
        const came = await askShop(address, manners, network, stop.signal);
        // The page came, and nobody of ours is there to read it: an update, or a worker that does not wake.
        const why = await outcomeOf(address, came).catch(() => 'unanswered' as const);
        reading.delete(address);
        unreached = 'page' in came || why !== 'elsewhere' ? [] : [...unreached, address];
        if (why === 'unanswered') {
          waiting.unshift(address);
          ended ??= { why };
        } else if (!why) read.push(address);
        else failed.set(address, why);
        if ('again' in came && came.again !== undefined) busyUntil(came.again);
        if (why === 'offline') ended ??= { why };
        if (unreached.length >= lostAfter) {
          for (const each of unreached) failed.delete(each);
          waiting.unshift(...unreached);
          unreached = [];
          ended ??= { why: 'unreachable' };
        }
        say();
      }
    }
    await Promise.all(Array.from({ length: manners.atOnce }, hand));
    running = undefined;
    if (stop.signal.aborted && !ended)
      return say(stop.signal.reason === left ? undefined : { why: 'cancelled' });
    say(ended);
  }

  async function outcomeOf(address: string, came: ShopAnswer): Promise<UnreadReason | undefined> {
    return 'page' in came ? network.take(address, came) : came.why;
  }

  return {
    press,
    /** Ends the press that runs; what came until then stays. */
    cancel: () => running?.abort(),
    /** The user went on to another shelf: the press for this one ends, and nothing is said of it there. */
    leave: () => running?.abort(left),
    isRunning: () => running !== undefined,
    /** Those of the addresses that a press now would ask for. */
    left: (addresses: readonly string[]) => [...new Set(addresses)].filter((address) => !isOver(address)),
  };
}

const left = 'left';
