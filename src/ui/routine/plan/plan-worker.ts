import { lessonOf } from '../../../core/learn/lesson.ts';
import { type BuildInput, type Built, building } from '../../../core/plan/build/build.ts';
import { suggest } from '../../../core/plan/suggest.ts';
import type { PlanAsked, PlanTold } from './ask-plan.ts';

/** Milliseconds until the first plans are told, between two words on how far it is, and until it gives up. */
const firstAfter = 150;
const toldEvery = 100;
const atMost = 2_000;

const tell = (told: PlanTold<unknown>) => postMessage(told);

/** Builds a day within the time a user waits: what was found by then is answered, unproven. */
function build(input: BuildInput): Built {
  const from = performance.now();
  const run = building(input);
  let toldAt = from;
  let shown = false;
  for (;;) {
    const { done, value } = run.next();
    if (done) return value;
    const now = performance.now();
    if (now - from > atMost) return value.soFar();
    if (now - toldAt < (shown ? toldEvery : firstAfter)) continue;
    tell({ share: value.share, ...(!shown && { soFar: value.soFar() }) });
    toldAt = now;
    shown = true;
  }
}

/** Tells how far a search is, not more often than can be seen. */
function tellShare(): (share: number) => void {
  let toldAt = performance.now();
  return (share) => {
    const now = performance.now();
    if (now - toldAt < toldEvery) return;
    tell({ share });
    toldAt = now;
  };
}

function answer(asked: PlanAsked) {
  switch (asked.ask) {
    case 'suggest':
      return suggest(asked.input, tellShare());
    case 'build':
      return build(asked.input);
    case 'lesson':
      return lessonOf(asked.input);
  }
}

addEventListener('message', ({ data }: MessageEvent<PlanAsked>) => tell({ done: answer(data) }));
