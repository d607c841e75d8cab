/** The part of `browser.storage.local` the store uses; tests hand in their own. */
export type Area = {
  get(keys: string[] | null): Promise<Record<string, unknown>>;
  set(values: Record<string, unknown>): Promise<void>;
  remove(keys: string[]): Promise<void>;
  clear(): Promise<void>;
  /** Newer browsers only. */
  getKeys?(): Promise<string[]>;
  getBytesInUse?(keys: null): Promise<number>;
  QUOTA_BYTES?: number;
  /** Tells every context of every change, in the order of the changes, some time after each. */
  onChanged?: {
    addListener(tell: (changes: Record<string, { newValue?: unknown }>) => void): void;
  };
};

/** Runs one after another everything that asks under one name, over all windows and the worker. */
export type Locks = { request<T>(name: string, job: () => Promise<T>): Promise<T> };

/** `navigator.locks` with a queue of this context before it; only the queue where there are no locks. */
export function oneAtATime(locks: Locks | undefined, name: string) {
  let last: Promise<unknown> = Promise.resolve();
  return <T>(job: () => Promise<T>): Promise<T> => {
    const turn = last.then(() => (locks ? locks.request(name, job) : job()));
    last = turn.catch(() => undefined);
    return turn;
  };
}

const utf8 = new TextEncoder();

/** Bytes as the browser counts them: each key and the JSON of its value. */
export const bytesOf = (values: Record<string, unknown>) =>
  Object.entries(values).reduce(
    (sum, [key, value]) => sum + utf8.encode(key).length + utf8.encode(JSON.stringify(value) ?? '').length,
    0,
  );
