import { buildDay } from '../../../core/plan/build/build.ts';
import { suggest } from '../../../core/plan/suggest.ts';
import type { Asked } from './ask-plan.ts';

addEventListener('message', ({ data }: MessageEvent<Asked>) =>
  postMessage(data.ask === 'suggest' ? suggest(data.input) : buildDay(data.input)),
);
