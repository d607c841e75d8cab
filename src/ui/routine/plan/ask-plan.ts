import { type Lesson, type LessonInput, lessonOf } from '../../../core/learn/lesson.ts';
import { type BuildInput, type Built, buildDay } from '../../../core/plan/build/build.ts';
import { type SuggestInput, type Suggestions, suggest } from '../../../core/plan/suggest.ts';

/** A question that may take a while to answer. */
export type PlanAsked =
  | { ask: 'suggest'; input: SuggestInput }
  | { ask: 'build'; input: BuildInput }
  | { ask: 'lesson'; input: LessonInput };

/** Who waits for an answer: a newer question of the same drops the older one. */
type Asker = PlanAsked['ask'] | 'fitted';
const workers: Partial<Record<Asker, Worker>> = {};

/** What the worker tells: on the way how far it is, and once what it found up to then; at last the answer. */
export type PlanTold<T> = { done: T } | { share: number; soFar?: T };

export type OnTheWay<T> = (told: { share: number; soFar?: T }) => void;

/** Where a worker can be had the search runs there. */
function askWorker<T>(asker: Asker, asked: PlanAsked, here: () => T, onTheWay?: OnTheWay<T>): Promise<T> {
  if (typeof Worker === 'undefined') return new Promise((answer) => answer(here()));
  workers[asker]?.terminate();
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  workers[asker] = worker;
  return new Promise((answer, fail) => {
    worker.onmessage = ({ data }: MessageEvent<PlanTold<T>>) =>
      'done' in data ? answer(data.done) : onTheWay?.(data);
    // A worker that cannot start or fails is no reason to have no answer.
    worker.onerror = () => {
      try {
        answer(here());
      } catch (problem) {
        fail(problem);
      }
    };
    worker.postMessage(asked);
  });
}

export const askSuggest = (
  input: SuggestInput,
  asker: 'suggest' | 'fitted' = 'suggest',
  onTheWay?: OnTheWay<Suggestions>,
): Promise<Suggestions> => askWorker(asker, { ask: 'suggest', input }, () => suggest(input), onTheWay);

export const askBuild = (input: BuildInput, onTheWay: OnTheWay<Built>): Promise<Built> =>
  askWorker('build', { ask: 'build', input }, () => buildDay(input), onTheWay);

export const askLesson = (input: LessonInput): Promise<Lesson | undefined> =>
  askWorker('lesson', { ask: 'lesson', input }, () => lessonOf(input));

/** Ends a search nobody waits for any more. */
export function stopAsking(asker: Asker): void {
  workers[asker]?.terminate();
  delete workers[asker];
}
