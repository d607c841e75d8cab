import type { CDPSession, Page } from 'playwright-core';

type Frame = { url: string };
type Node = { id: number; callFrame: Frame; children?: number[] };
type Profile = { nodes: Node[]; samples: number[]; timeDeltas: number[]; startTime: number; endTime: number };

/** Main-thread time of the extension within a span: all of it, its share of the span, its longest stretch; in ms. */
export type Spent = { all: number; share: number; longest: number };

/**
 * Takes a CPU profile of a page while `during` runs. A sample is ours when any function on its stack came from
 * the extension's files, the browser's own work on our behalf included.
 */
export async function profiled(page: Page, during: () => Promise<unknown>, throttle = 1): Promise<Spent> {
  const session: CDPSession = await page.context().newCDPSession(page);
  await session.send('Profiler.enable');
  await session.send('Profiler.setSamplingInterval', { interval: 500 });
  await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
  await session.send('Profiler.start');
  await during();
  const { profile } = (await session.send('Profiler.stop')) as { profile: Profile };
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();

  const ours = new Set<number>();
  const nodes = new Map(profile.nodes.map((node) => [node.id, node]));
  const visit = (node: Node, within: boolean) => {
    const mine = within || node.callFrame.url.startsWith('chrome-extension://');
    if (mine) ours.add(node.id);
    for (const child of node.children ?? []) visit(nodes.get(child)!, mine);
  };
  if (profile.nodes[0]) visit(profile.nodes[0], false);
  let [all, longest, run] = [0, 0, 0];
  profile.samples.forEach((sample, i) => {
    const took = (profile.timeDeltas[i + 1] ?? 0) / 1000;
    if (!ours.has(sample)) {
      run = 0;
      return;
    }
    all += took;
    run += took;
    longest = Math.max(longest, run);
  });
  return { all, share: all / ((profile.endTime - profile.startTime) / 1000), longest };
}
