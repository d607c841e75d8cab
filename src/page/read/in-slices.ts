/** Work that may pause between its parts. */
export type Work<T> = Generator<void, T>;

const slice = 15; // ms of the page's main thread at a time

/** Does all of it now. */
export function finished<T>(work: Work<T>): T {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

/**
 * Does work a little at a time, so that no page is held up: what is quickly done is done when this returns, and
 * what is left whenever the page had its turn. `then` hears how long all took, in ms.
 */
export function inSlices(work: Work<unknown>, then: (took: number) => void, before = 0): void {
  const from = performance.now();
  let done: boolean | undefined;
  try {
    do {
      done = true; // what throws is over
      done = work.next().done;
    } while (!done && performance.now() - from < slice);
  } finally {
    const took = before + performance.now() - from;
    if (done) then(took);
    else setTimeout(inSlices, 0, work, then, took);
  }
}
