import { type BuildInput, type Built, buildDay } from '../../core/plan/build/build.ts';
import { type SuggestInput, type Suggestions, suggest } from '../../core/plan/suggest.ts';

/** A question that may take a while to answer. */
export type Asked = { ask: 'suggest'; input: SuggestInput } | { ask: 'build'; input: BuildInput };

/** Where a worker can be had the search runs there, and a newer question of a sort drops the older one. */
const workers: Partial<Record<Asked['ask'], Worker>> = {};

function askWorker<T>(asked: Asked, here: () => T): Promise<T> {
  if (typeof Worker === 'undefined') return Promise.resolve(here());
  workers[asked.ask]?.terminate();
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  workers[asked.ask] = worker;
  return new Promise((answer) => {
    worker.onmessage = ({ data }: MessageEvent<T>) => answer(data);
    // A worker that cannot start or fails is no reason to have no answer.
    worker.onerror = () => answer(here());
    worker.postMessage(asked);
  });
}

export const askSuggest = (input: SuggestInput): Promise<Suggestions> =>
  askWorker({ ask: 'suggest', input }, () => suggest(input));

export const askBuild = (input: BuildInput): Promise<Built> =>
  askWorker({ ask: 'build', input }, () => buildDay(input));

/** Ends a search nobody waits for any more. */
export function stopAsking(what: Asked['ask']): void {
  workers[what]?.terminate();
  delete workers[what];
}
