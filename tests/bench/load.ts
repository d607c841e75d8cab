// Fifty tabs, and a day of shopping in minutes: pages one after another, the worker stopped in between. What must not
// grow is printed for each sixth of the way: time until painted, heap of tab and worker, what is stored.
import type { CDPSession } from 'playwright-core';
import { type Harness, openShop, painted, until } from '../browser/harness.ts';
import { goods } from '../store/goods.ts';
import { median } from './measure.ts';

const parts = 6;
const mega = (bytes: number) => (bytes / 1e6).toFixed(1);

/** What one protocol command answers in a target that Playwright gives no session for. */
async function askTarget(session: CDPSession, targetId: string, methods: string[]): Promise<unknown> {
  const { sessionId } = await session.send('Target.attachToTarget', { targetId, flatten: false });
  let answer: unknown;
  for (const [id, method] of methods.entries()) {
    const heard = new Promise<unknown>((done) => {
      const hear = ({ sessionId: from, message }: { sessionId: string; message: string }) => {
        const said = JSON.parse(message) as { id?: number; result?: unknown };
        if (from !== sessionId || said.id !== id) return;
        session.off('Target.receivedMessageFromTarget', hear);
        done(said.result);
      };
      session.on('Target.receivedMessageFromTarget', hear);
    });
    await session.send('Target.sendMessageToTarget', {
      sessionId,
      message: JSON.stringify({ id, method }),
    });
    answer = await heard;
  }
  await session.send('Target.detachFromTarget', { sessionId });
  return answer;
}

/** Bytes of heap in use, garbage taken out: of the worker, and of the page at this address. */
async function heaps(shop: Harness, url: string): Promise<{ worker: number; page: number }> {
  const session = await shop.context.browser()!.newBrowserCDPSession();
  await shop.remembered(); // wakes the worker
  const { targetInfos } = await session.send('Target.getTargets');
  const used = async (good: (type: string, at: string) => boolean) => {
    const found = targetInfos.find((one) => good(one.type, one.url));
    if (!found) return Number.NaN;
    const usage = await askTarget(session, found.targetId, [
      'HeapProfiler.collectGarbage',
      'Runtime.getHeapUsage',
    ]);
    return (usage as { usedSize: number }).usedSize;
  };
  const worker = await used((type, at) => type === 'service_worker' && at.includes(shop.id));
  const page = await used((type, at) => type === 'page' && at === url);
  await session.detach();
  return { worker, page };
}

const stored = async (shop: Harness) =>
  (await shop.worker()).evaluate(async () => ({
    local: await chrome.storage.local.getBytesInUse(null),
    session: await chrome.storage.session.getBytesInUse(null),
  }));

const isPainted = (strip: string) => strip !== '';

/** Looks at pages in one tab, the worker stopped after every tenth; a line for each thing that must not grow. */
async function dayOfLooks(looks: number): Promise<string[]> {
  const shop = await openShop();
  try {
    const page = await shop.open('/');
    const took: number[] = [];
    const at: { worker: number; page: number; local: number; session: number }[] = [];
    for (let nth = 1; nth <= looks; nth++) {
      const from = performance.now();
      await page.goto(`${shop.store.url}/goods/${goods[nth % goods.length]!.id}`);
      await until(async () => (await painted(page)).strip, isPainted, 20_000).catch(() => undefined);
      took.push(performance.now() - from);
      if (nth % (looks / parts) === 0)
        at.push({ ...(await heaps(shop, page.url())), ...(await stored(shop)) });
      if (nth % 10 === 0) await shop.killWorker();
    }
    const sixth = (i: number) => took.slice((i * looks) / parts, ((i + 1) * looks) / parts);
    const row = (of: (i: number) => string) => Array.from({ length: parts }, (_, i) => of(i)).join(' · ');
    return [
      `${looks} pages one after another, worker stopped ${Math.floor(looks / 10)} times, by sixths:`,
      `  until painted, least and median ms: ${row((i) => `${Math.min(...sixth(i)).toFixed(0)}/${median(sixth(i)).toFixed(0)}`)}`,
      `  heap of the tab, MB: ${row((i) => mega(at[i]!.page))}; of the worker: ${row((i) => mega(at[i]!.worker))}`,
      `  stored, bytes: local ${row((i) => `${at[i]!.local}`)}; session ${row((i) => `${at[i]!.session}`)}`,
    ];
  } finally {
    await shop.close();
  }
}

/** Opens tabs and leaves them open; what each tenth adds, and how long a change of a setting takes to reach all. */
async function manyTabs(count: number): Promise<string[]> {
  const shop = await openShop();
  try {
    const took: number[] = [];
    const workers: string[] = [];
    const kept: number[] = [];
    for (let nth = 1; nth <= count; nth++) {
      const from = performance.now();
      const tab = await shop.open(`/goods/${goods[nth % goods.length]!.id}`);
      await until(async () => (await painted(tab)).strip, isPainted, 20_000).catch(() => undefined);
      took.push(performance.now() - from);
      if (nth % (count / 5) !== 0) continue;
      workers.push(mega((await heaps(shop, tab.url())).worker));
      kept.push((await stored(shop)).session);
    }
    const fifth = (i: number) => took.slice((i * count) / 5, ((i + 1) * count) / 5);
    const least = [0, 1, 2, 3, 4].map((i) => Math.min(...fifth(i)).toFixed(0));
    const from = performance.now();
    await shop.change([{ do: 'set', settings: { glyphSize: 'large' } }]);
    const changed = performance.now() - from;
    return [
      `${count} tabs open, by fifths: least ms until painted ${least.join(' · ')}; heap of the worker, MB: ${workers.join(' · ')}; session storage, bytes: ${kept.join(' · ')}`,
      `  a change of a setting is answered after ${changed.toFixed(0)} ms with all of them open`,
    ];
  } finally {
    await shop.close();
  }
}

export async function lines(): Promise<string[]> {
  return [...(await manyTabs(50)), ...(await dayOfLooks(480))];
}
