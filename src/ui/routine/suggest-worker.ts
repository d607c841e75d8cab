import { type SuggestInput, suggest } from '../../core/suggest.ts';

addEventListener('message', ({ data }: MessageEvent<SuggestInput>) => postMessage(suggest(data)));
