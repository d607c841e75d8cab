import { useEffect, useState } from 'preact/hooks';
import type { Lesson } from '../../core/learn/lesson.ts';
import { createAskedOnce } from '../../use/asked-once.ts';
import { lessonAsked, type Taught } from '../../use/judge/lesson.ts';
import { askLesson } from '../routine/plan/ask-plan.ts';
import type { World } from '../world.ts';

const lessons = createAskedOnce<Lesson | undefined>();

/** What the newest wash day teaches, once it is worked out beside the page; `waits` until then, or until that failed. */
export function useTaught(world: World): { taught?: Taught | undefined; waits: boolean } {
  const [, setArrived] = useState(0);
  const [failed, setFailed] = useState(false);
  const asked = lessonAsked(world);
  const known = asked && lessons.known(asked.by);
  useEffect(() => {
    setFailed(false);
    if (!asked || known) return;
    let current = true;
    lessons
      .answer(asked.by, () => askLesson(asked.input))
      .then(
        () => current && setArrived((n) => n + 1),
        () => current && setFailed(true),
      );
    return () => {
      current = false;
    };
  }, asked?.by ?? []);
  if (!asked || !known) return { waits: asked !== undefined && !failed };
  const lesson = known.value;
  return { taught: lesson && { ...asked, lesson }, waits: false };
}
