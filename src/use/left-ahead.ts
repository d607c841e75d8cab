import type { Reading } from '../core/reading/reading.ts';
import type { Remembered } from '../store/remembered.ts';
import type { Session } from '../store/undo-stack.ts';

const keptKey = 'ahead:kept';
const readKey = 'ahead:read';
export const aheadKeys = [keptKey, readKey];
export const isAheadKey = (key: string) => aheadKeys.includes(key);

/** What a panel that opens can begin with while the worker still wakes. */
export type Ahead = { remembered?: Remembered; readings: [asked: string, reading: Reading][] };

/** Everything remembered as it stands after a write, by that write's own word. */
type AsOf = { written: unknown; remembered: Remembered };

const mostThings = 500; // products and wash days; more would take longer to hand over than to wait for
const mostReadings = 24;
const longest = 50_000; // letters of one reading
const pause = 300; // ms: what comes together is left together

/** What was left in storage.session; what is remembered only where it is as new as the store. */
export function aheadIn(session: Record<string, unknown>, written: unknown): Ahead {
  const { [keptKey]: kept, [readKey]: read } = session as {
    [keptKey]?: { written: unknown; json: string };
    [readKey]?: string;
  };
  return {
    ...(kept && kept.written === written && { remembered: JSON.parse(kept.json) as Remembered }),
    readings: read ? (JSON.parse(read) as Ahead['readings']) : [],
  };
}

/**
 * Leaves in storage.session what a panel would else wait for a woken worker to say: all that is remembered, and
 * the labels read last. As JSON: a string is handed over far quicker than what it stands for.
 * @param known what is remembered, where it is known which write it is as new as
 */
export function createAhead(session: Session, known: () => AsOf | undefined) {
  /** By what was asked, the JSON of both; the newest last. */
  let readings = new Map<string, string>();
  let [isRead, isMerged] = [false, false];
  let keptAt: unknown;
  let life = 0;
  let isDue = false;

  async function leave() {
    const ours = life;
    if (isRead && !isMerged) {
      const earlier = aheadIn(await session.get(readKey), undefined).readings;
      if (ours !== life) return;
      const all = earlier.map((each) => [each[0], JSON.stringify(each)] as const);
      readings = new Map(
        [...all.filter(([asked]) => !readings.has(asked)), ...readings].slice(-mostReadings),
      );
      isMerged = true;
    }
    const values: Record<string, unknown> = {};
    if (isRead) values[readKey] = `[${[...readings.values()].join()}]`;
    const now = known();
    if (now && now.written !== keptAt) {
      const { products, log } = now.remembered;
      if (products.length + log.length > mostThings) await session.remove([keptKey]);
      else values[keptKey] = { written: now.written, json: JSON.stringify(now.remembered) };
    }
    if (ours !== life) return;
    [isRead, keptAt] = [false, now?.written];
    if (Object.keys(values).length > 0) await session.set(values);
  }

  return {
    /** A label was read: left with the next that is left. */
    read(asked: string, reading: Reading) {
      const json = JSON.stringify([asked, reading]);
      if (json.length > longest) return;
      readings.delete(asked);
      readings.set(asked, json);
      for (const oldest of readings.keys()) {
        if (readings.size <= mostReadings) break;
        readings.delete(oldest);
      }
      isRead = true;
    },
    /** There is something new to leave. Without room for it a panel waits, as it would without us. */
    soon() {
      if (isDue) return;
      isDue = true;
      setTimeout(() => {
        isDue = false;
        void leave().catch(() => undefined);
      }, pause);
    },
    /** Nothing of before is left any more. */
    forget() {
      life++;
      readings.clear();
      isRead = false;
      keptAt = undefined;
    },
  };
}

export type LeavingAhead = ReturnType<typeof createAhead>;
