import { expect, it } from 'vitest';
import { toViews } from '../../entrypoints/background/answers/to-views.ts';
import type { Parts } from '../../entrypoints/background/parts.ts';
import { nothing } from '../ui/fake-world.ts';

it('to a panel that opens is told what is remembered, and then the lookup is built that it asks next', async () => {
  const done: string[] = [];
  const readings = {
    get lookup() {
      return done.push('lookup');
    },
  };
  const parts = { readings, keeper: { remembered: async () => nothing } } as unknown as Parts;
  const remembered = toViews(parts)['remembered-parts']!;
  const sender = {} as chrome.runtime.MessageSender;
  const { stamps } = await remembered({}, sender);
  done.push('told');
  await expect.poll(() => done).toEqual(['told', 'lookup']);
  // One that has been told before asks for what changed, and needs none.
  await remembered(stamps, sender);
  await new Promise((turn) => setTimeout(turn));
  expect(done).toEqual(['told', 'lookup']);
});
