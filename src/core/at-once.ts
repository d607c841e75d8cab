/** Does work that may pause between its parts, without a pause. */
export function atOnce<T>(work: Iterator<unknown, T>): T {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}
