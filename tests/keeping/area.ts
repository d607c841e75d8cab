import type { Area } from '../../src/store/area.ts';
import { bytesOf } from '../../src/store/area.ts';

/**
 * A storage area with the manners of the browser's: plain JSON only, answers some turns later, refuses a `set`
 * over its quota whole. `dieAfter` makes the next call of that name take effect or not and then never answer.
 */
export function slowArea(
  values: Record<string, unknown> = {},
  { quota = 10_485_760, slow = true, tells = false } = {},
) {
  const held = new Map(Object.entries(values).map(([key, value]) => [key, JSON.stringify(value)]));
  const size = (key: string, json: string | undefined) =>
    json === undefined ? 0 : Buffer.byteLength(key) + Buffer.byteLength(json);
  let bytes = bytesOf(values);
  let fail: { call: 'set' | 'remove'; before: boolean } | undefined;
  const later = async () => {
    if (slow) for (let i = Math.floor(Math.random() * 3); i >= 0; i--) await Promise.resolve();
  };
  const killed = (call: 'set' | 'remove', before: boolean) => {
    if (fail?.call !== call || fail.before !== before) return;
    fail = undefined;
    throw new Error('worker killed');
  };
  const pick = (keys: Iterable<string>) =>
    Object.fromEntries(
      [...keys].filter((key) => held.has(key)).map((key) => [key, JSON.parse(held.get(key)!) as unknown]),
    );
  const drop = (key: string) => {
    bytes -= size(key, held.get(key));
    held.delete(key);
  };
  type Changes = Record<string, { newValue?: unknown }>;
  const listeners: ((changes: Changes) => void)[] = [];
  // Each listener hears of every change in order, some time later, as a context of its own.
  const turns = new Map<(changes: Changes) => void, Promise<void>>();
  const tell = (changes: Changes) => {
    for (const listener of listeners)
      turns.set(
        listener,
        (turns.get(listener) ?? Promise.resolve()).then(async () => {
          await later();
          listener(structuredClone(changes));
        }),
      );
  };
  const area: Area = {
    QUOTA_BYTES: quota,
    async get(keys) {
      await later();
      return pick(keys ?? held.keys());
    },
    async set(set) {
      await later();
      killed('set', true);
      const next = Object.entries(set).map(([key, value]) => [key, JSON.stringify(value)] as const);
      const grown = next.reduce(
        (sum, [key, json]) => sum + size(key, json) - size(key, held.get(key)),
        bytes,
      );
      if (grown > quota) throw new Error('QUOTA_BYTES quota exceeded');
      for (const [key, json] of next) held.set(key, json);
      bytes = grown;
      tell(Object.fromEntries(next.map(([key, json]) => [key, { newValue: JSON.parse(json) as unknown }])));
      killed('set', false);
    },
    async remove(keys) {
      await later();
      killed('remove', true);
      const there = keys.filter((key) => held.has(key));
      for (const key of keys) drop(key);
      tell(Object.fromEntries(there.map((key) => [key, {}])));
    },
    async clear() {
      await later();
      tell(Object.fromEntries([...held.keys()].map((key) => [key, {}])));
      for (const key of [...held.keys()]) drop(key);
    },
    async getKeys() {
      await later();
      return [...held.keys()];
    },
    async getBytesInUse() {
      await later();
      return bytes;
    },
    ...(tells && { onChanged: { addListener: (listener) => void listeners.push(listener) } }),
  };
  return {
    area,
    /** Until every listener has heard of every change. */
    told: async () => {
      await Promise.all(turns.values());
    },
    /** What is really there. */
    held: () => pick(held.keys()),
    failNext: (call: 'set' | 'remove', before = true) => {
      fail = { call, before };
    },
  };
}
