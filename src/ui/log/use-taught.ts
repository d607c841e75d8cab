import { useEffect, useState } from 'preact/hooks';
import { type Lesson, lessonOf } from '../../core/learn/lesson.ts';
import { type LessonAsked, lessonAsked, type Taught } from '../../use/judge/lesson.ts';
import { askLesson } from '../routine/plan/ask-plan.ts';
import type { World } from '../world.ts';

type Known = { by: readonly unknown[]; lesson: Lesson | undefined };
let known: Known | undefined;
let asking: { by: readonly unknown[]; answer: Promise<Lesson | undefined> } | undefined;

const same = (by: readonly unknown[], other: readonly unknown[] | undefined) =>
  by.length === other?.length && by.every((each, at) => each === other[at]);

/** Asked once, however many views ask. */
function answerTo({ by, input }: LessonAsked): Promise<Lesson | undefined> {
  if (!same(by, asking?.by)) asking = { by, answer: askLesson(input) };
  return asking!.answer;
}

/** What the newest wash day teaches, once it is worked out beside the page; `waits` until then. */
export function useTaught(world: World): { taught?: Taught | undefined; waits: boolean } {
  const [, setArrived] = useState(0);
  const asked = lessonAsked(world);
  // Every change of the routine is tried for it: where there is a worker, not here.
  if (asked && typeof Worker === 'undefined' && !same(asked.by, known?.by))
    known = { by: asked.by, lesson: lessonOf(asked.input) };
  const isKnown = asked && same(asked.by, known?.by);
  useEffect(() => {
    if (!asked || isKnown) return;
    let current = true;
    void answerTo(asked).then((lesson) => {
      known = { by: asked.by, lesson };
      if (current) setArrived((n) => n + 1);
    });
    return () => {
      current = false;
    };
  }, asked?.by ?? []);
  if (!asked || !isKnown) return { waits: asked !== undefined };
  const lesson = known?.lesson;
  return { taught: lesson && { ...asked, lesson }, waits: false };
}
