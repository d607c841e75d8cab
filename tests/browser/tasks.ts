// The longest tasks while something is done, in milliseconds of processor time: what other programs on a shared
// machine take is not counted.
import type { BrowserContext } from 'playwright-core';

type Traced = {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  ts: number;
  dur?: number;
  tdur?: number;
  args?: { name?: string; data?: { url?: string; message?: string } };
};

/** Longest task of any page's main thread, of those of them with a call of ours, and of the background's thread. */
export type Longest = { page: number; ours: number; background: number; tasks: number };

const categories = ['toplevel', '__metadata', 'devtools.timeline', 'blink.user_timing'];

/** Traces every process of the browser while `job` runs. */
export async function longestTasks(context: BrowserContext, job: () => Promise<unknown>): Promise<Longest> {
  const session = await context.browser()!.newBrowserCDPSession();
  const events: Traced[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Traced[])));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: categories },
  });
  await job();
  const complete = new Promise((done) => session.once('Tracing.tracingComplete', done));
  await session.send('Tracing.end');
  await complete;
  await session.detach();
  return longestOf(events);
}

const threadOf = ({ pid, tid }: Traced) => `${pid}:${tid}`;

/** A call into the extension's files, or a mark that test builds leave where a promise goes on. */
const isOurs = ({ name, args }: Traced) =>
  args?.data?.url?.startsWith('chrome-extension://') || name.startsWith('strandline ');

function longestOf(events: Traced[]): Longest {
  const named = (name: string) =>
    new Set(events.filter((each) => each.name === 'thread_name' && each.args?.name === name).map(threadOf));
  const mains = named('CrRendererMain');
  const workers = named('ServiceWorker thread');
  const calls = Map.groupBy(events.filter(isOurs), threadOf);
  const longest: Longest = { page: 0, ours: 0, background: 0, tasks: 0 };
  for (const task of events) {
    if (!task.name.endsWith('::RunTask') || task.ph !== 'X') continue;
    const thread = threadOf(task);
    const took = (task.tdur ?? 0) / 1000;
    if (workers.has(thread)) longest.background = Math.max(longest.background, took);
    if (!mains.has(thread)) continue;
    longest.tasks++;
    longest.page = Math.max(longest.page, took);
    if (took <= longest.ours) continue;
    const end = task.ts + (task.dur ?? 0);
    if (calls.get(thread)?.some(({ ts }) => ts >= task.ts && ts <= end)) longest.ours = took;
  }
  return longest;
}
