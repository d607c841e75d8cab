const waits = [0, 200, 1000]; // ms before it is tried once more

/** Tries what may fail for a moment, unless a failure is final; the last one is thrown. */
export async function triedAgain<T>(
  work: () => Promise<T>,
  isFinal?: (problem: unknown) => boolean,
): Promise<T> {
  for (const ms of waits)
    try {
      return await work();
    } catch (problem) {
      if (isFinal?.(problem)) throw problem;
      await new Promise((later) => setTimeout(later, ms));
    }
  return work();
}
