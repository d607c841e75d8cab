import { describe, expect, it } from 'vitest';
import { shelfFacts } from '../../../dictionary/shelf.ts';
import { createShelfReading, type Progress, type ShelfNetwork } from '../../../src/page/shelf/read-shelf.ts';

// The rules of asking: RFC 9309 (robots.txt), RFC 9110 10.2.3 (Retry-After); the numbers are dictionary/shelf.json.

const origin = 'https://shop.example';
const { manners } = shelfFacts;
type Reply = {
  status?: number;
  body?: string;
  headers?: Record<string, string>;
  fails?: boolean;
  hangs?: boolean;
};

/** A shop that answers by path, on a clock of its own that only waiting moves. */
function shop(
  replies: Record<string, Reply>,
  took: (address: string) => 'no-list' | undefined = () => undefined,
) {
  let now = 1_000_000;
  const asked: { path: string; at: number; init: RequestInit }[] = [];
  const told: Progress[] = [];
  const sleepers: { at: number; done: () => void }[] = [];
  let atOnce = 0;
  let most = 0;
  const network: ShelfNetwork = {
    online: () => true,
    now: () => now,
    // the clock jumps to whoever waits shortest, one at a time
    wait: (ms, signal) =>
      new Promise<void>((done) => {
        if (signal.aborted || ms === 0) return done();
        sleepers.push({ at: now + ms, done });
        setTimeout(() => {
          const first = sleepers.sort((a, b) => a.at - b.at).shift();
          if (!first) return;
          now = Math.max(now, first.at);
          first.done();
        });
      }),
    take: async (address) => took(address),
    fetch: (async (input: string, init: RequestInit) => {
      const path = input.slice(origin.length);
      asked.push({ path, at: now, init });
      atOnce++;
      most = Math.max(most, atOnce);
      const {
        status = 200,
        body = '<p>page</p>',
        headers = {},
        fails,
        hangs,
      } = replies[path] ?? (path === '/robots.txt' ? { status: 404 } : {});
      for (let n = 0; n < 4; n++) await new Promise((next) => setTimeout(next)); // longer than the next one waits
      if (hangs) {
        init.signal!.throwIfAborted(); // as a browser's own: off before it ever hung
        await new Promise((_, fail) => init.signal!.addEventListener('abort', fail));
      }
      atOnce--;
      if (fails) throw new TypeError('Failed to fetch');
      return new Response(status === 204 ? null : body, {
        status,
        headers: { 'content-type': 'text/html', ...headers },
      });
    }) as typeof fetch,
  };
  const reading = createShelfReading(origin, manners, network, (progress) => told.push(progress));
  return {
    reading,
    asked,
    told,
    last: () => told.at(-1)!,
    most: () => most,
    setNow: (to: number) => {
      now = to;
    },
    network,
  };
}
const products = (n: number) => Array.from({ length: n }, (_, i) => `${origin}/products/${i}`);

describe('manners', () => {
  it('asks for at most 24 a press, two at a time, at least 500 ms apart, and goes on at the next press', async () => {
    const { reading, asked, last, most } = shop({});
    await reading.press(products(60));
    const pages = asked.filter(({ path }) => path !== '/robots.txt');
    expect(pages).toHaveLength(24);
    expect(most()).toBe(2);
    const starts = asked.map(({ at }) => at);
    for (const [i, at] of starts.entries())
      if (i > 0) expect(at - starts[i - 1]!).toBeGreaterThanOrEqual(500);
    expect(last().read).toHaveLength(24);
    await reading.press(products(60));
    await reading.press(products(60));
    await reading.press(products(60));
    const paths = asked.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toHaveLength(61);
  });

  it('keeps its distance from a request that began late', async () => {
    const made = shop({});
    const { wait, now } = made.network;
    let n = 0;
    made.network.wait = async (ms, signal) => {
      await wait(ms, signal);
      if (ms > 0 && n++ % 2 === 0) made.setNow(now() + 300); // a timer of a busy machine
    };
    await made.reading.press(products(10));
    const starts = made.asked.map(({ at }) => at);
    for (const [i, at] of starts.entries())
      if (i > 0) expect(at - starts[i - 1]!).toBeGreaterThanOrEqual(500);
  });

  it('counts each press by itself', async () => {
    const { reading, told } = shop({});
    await reading.press(products(30));
    await reading.press(products(30));
    expect(told.filter(({ of }) => of === 6).map(({ done }) => done)).toContain(0);
    expect(told.at(-1)).toMatchObject({ done: 6, of: 6 });
  });

  it('sends no cookies and no referrer, and never follows off the shop', async () => {
    const { reading, asked } = shop({});
    await reading.press(products(3));
    for (const { init } of asked)
      expect(init).toMatchObject({
        method: 'GET',
        mode: 'same-origin',
        credentials: 'omit',
        referrerPolicy: 'no-referrer',
      });
  });

  it('asks for the same address once, however often the shelf shows it', async () => {
    const { reading, asked } = shop({});
    await reading.press([...products(2), ...products(2)]);
    expect(asked.map(({ path }) => path)).toEqual(['/robots.txt', '/products/0', '/products/1']);
  });

  it.each([429, 503])('stops at %i and waits as long as the shop says', async (status) => {
    const { reading, asked, last, setNow, network } = shop({
      '/products/3': { status, headers: { 'retry-after': '120' } },
    });
    await reading.press(products(20));
    const before = asked.length;
    expect(before).toBeLessThanOrEqual(6);
    expect(last().ended).toMatchObject({ why: 'shop-busy' });
    await reading.press(products(20));
    expect(asked).toHaveLength(before);
    setNow(network.now() + 121_000);
    await reading.press(products(20));
    expect(asked.length).toBeGreaterThan(before);
    expect(asked.filter(({ path }) => path === '/products/0')).toHaveLength(1);
  });

  it('takes a date for Retry-After', async () => {
    const { reading, last } = shop({
      '/products/0': { status: 503, headers: { 'retry-after': new Date(1_060_000).toUTCString() } },
    });
    await reading.press(products(1));
    expect(last().ended).toEqual({ why: 'shop-busy', again: 1_060_000 });
  });
});

describe('robots.txt', () => {
  it('is obeyed path by path', async () => {
    const { reading, asked, last } = shop({
      '/robots.txt': {
        body: 'User-agent: *\nDisallow: /products/1\n',
        headers: { 'content-type': 'text/plain' },
      },
    });
    await reading.press(products(3));
    expect(asked.map(({ path }) => path)).toEqual(['/robots.txt', '/products/0', '/products/2']);
    expect(last().failed.get(`${origin}/products/1`)).toBe('robots');
  });
  it.each([
    [404, 2],
    [403, 2],
    [500, 0],
  ])('answered %i lets %i of two pages be asked for', async (status, n) => {
    const { reading, asked } = shop({ '/robots.txt': { status } });
    await reading.press(products(2));
    expect(asked.length - 1).toBe(n);
  });
});

describe('what goes wrong ends in a clear state', () => {
  it.each<[string, Reply, string]>([
    ['404', { status: 404 }, 'not-found'],
    ['403', { status: 403 }, 'refused'],
    ['401', { status: 401 }, 'login'],
    ['500', { status: 500 }, 'shop-broken'],
    ['a redirect off the shop', { fails: true }, 'elsewhere'],
    ['5 MB', { body: 'a'.repeat(5_000_000) }, 'too-large'],
    ['5 MB said beforehand', { headers: { 'content-length': '5000000' } }, 'too-large'],
    ['a picture', { headers: { 'content-type': 'image/png' } }, 'no-page'],
  ])('%s', async (_, reply, why) => {
    const { reading, last, asked } = shop({ '/products/0': reply });
    await reading.press(products(2));
    expect(last().failed.get(`${origin}/products/0`)).toBe(why);
    expect(last().read).toEqual([`${origin}/products/1`]);
    await reading.press(products(2));
    expect(asked.filter(({ path }) => path === '/products/0')).toHaveLength(1);
  });

  it('a page without a list is said, and not asked for again', async () => {
    const { reading, last } = shop({}, () => 'no-list');
    await reading.press(products(1));
    expect(last().failed.get(`${origin}/products/0`)).toBe('no-list');
    expect(reading.left(products(1))).toEqual([]);
  });

  it('cancelled midway keeps what came and goes on later', async () => {
    const { reading, asked, last } = shop({ '/products/4': { hangs: true } });
    const pressed = reading.press(products(10));
    while (!asked.some(({ path }) => path === '/products/4')) await new Promise((next) => setTimeout(next));
    await new Promise((next) => setTimeout(next, 20));
    reading.cancel();
    await pressed;
    expect(last().ended).toEqual({ why: 'cancelled' });
    expect(last().read.length).toBeGreaterThanOrEqual(3);
    const left = reading.left(products(10));
    expect(left).toContain(`${origin}/products/4`);
    expect(left.length + last().read.length).toBe(10);
  });

  it('off-line nothing is asked, and nothing is held against the shop', async () => {
    const { reading, asked, last, network } = shop({});
    network.online = () => false;
    await reading.press(products(2));
    expect(asked).toEqual([]);
    expect(last()).toMatchObject({ read: [], ended: { why: 'offline' } });
    network.online = () => true;
    await reading.press(products(2));
    expect(last().read).toHaveLength(2);
  });

  it('the line going midway ends the press; what came stays, and the next press goes on', async () => {
    const { reading, asked, last, network } = shop({});
    network.online = () => asked.length < 6;
    await reading.press(products(20));
    expect(last().ended).toEqual({ why: 'offline' });
    expect(last().read).toHaveLength(5);
    expect(asked).toHaveLength(6);
    network.online = () => true;
    await reading.press(products(20));
    expect(last().read).toHaveLength(20);
    expect(new Set(asked.map(({ path }) => path)).size).toBe(asked.length);
  });

  it('a shop out of reach three times in a row ends the press, one page that leads away does not', async () => {
    const lost = Object.fromEntries([4, 5, 6].map((n) => [`/products/${n}`, { fails: true }]));
    const { reading, asked, last } = shop({ '/products/1': { fails: true }, ...lost });
    await reading.press(products(20));
    expect(last().ended).toEqual({ why: 'unreachable' });
    expect([...last().failed]).toEqual([[`${origin}/products/1`, 'elsewhere']]);
    expect(asked.length).toBeLessThanOrEqual(9);
    expect(reading.left(products(20))).toContain(`${origin}/products/4`);
  });

  it('rules that could not be asked for are not made up', async () => {
    const replies = { '/robots.txt': { fails: true } };
    const { reading, asked, last } = shop(replies);
    await reading.press(products(2));
    expect(last()).toMatchObject({ ended: { why: 'unreachable' }, failed: new Map() });
    replies['/robots.txt'].fails = false;
    await reading.press(products(2));
    expect(asked).toHaveLength(4);
  });

  it('nobody of ours to read a page that came: said, and the press is over', async () => {
    const { reading, last } = shop({}, () => {
      throw new Error('Extension context invalidated.');
    });
    await reading.press(products(9));
    expect(last()).toMatchObject({ ended: { why: 'unanswered' }, read: [], failed: new Map() });
    expect(reading.isRunning()).toBe(false);
    expect(reading.left(products(9))).toHaveLength(9);
  });

  it('left for another shelf, nothing is said of it', async () => {
    const { reading, asked, last } = shop({ '/products/4': { hangs: true } });
    const pressed = reading.press(products(10));
    while (!asked.some(({ path }) => path === '/products/4')) await new Promise((next) => setTimeout(next));
    await new Promise((next) => setTimeout(next, 20));
    reading.leave();
    await pressed;
    expect(last().ended).toBeUndefined();
  });
});
