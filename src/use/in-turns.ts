const slice = 30; // ms of work before others get their turn
const mostOfAPage = 4000; // ms of work that one page may ask for

/**
 * Does work that pauses between its parts a little at a time, so that no page holds up another or the panel.
 * Undefined where it is called `off` meanwhile, or asked for more than it may (`most`, in ms of work).
 */
export async function inTurns<T>(
  work: Iterator<void, T>,
  off: () => boolean,
  { now = () => performance.now(), most = mostOfAPage } = {},
): Promise<T | undefined> {
  let spent = 0;
  while (spent < most && !off()) {
    const from = now();
    let step = work.next();
    while (!step.done && now() - from < slice) step = work.next();
    if (step.done) return step.value;
    spent += now() - from;
    await new Promise<void>((next) => setTimeout(next));
  }
  return undefined;
}
