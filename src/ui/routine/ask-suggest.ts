import { type SuggestInput, type Suggestions, suggest } from '../../core/plan/suggest.ts';

/** Where a worker can be had the search runs there, and a newer question drops the older one. */
let worker: Worker | undefined;

export function askSuggest(input: SuggestInput): Promise<Suggestions> {
  if (typeof Worker === 'undefined') return Promise.resolve(suggest(input));
  worker?.terminate();
  worker = new Worker(new URL('./suggest-worker.ts', import.meta.url), { type: 'module' });
  const asked = worker;
  return new Promise((answer) => {
    const here = () => answer(suggest(input));
    asked.onmessage = ({ data }: MessageEvent<Suggestions>) => answer(data);
    // A worker that cannot start or fails is no reason to have no answer.
    asked.onerror = here;
    asked.postMessage(input);
  });
}
