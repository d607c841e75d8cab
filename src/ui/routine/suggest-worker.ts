import { type SuggestInput, suggest } from '../../core/plan/suggest.ts';

addEventListener('message', ({ data }: MessageEvent<SuggestInput>) => postMessage(suggest(data)));
