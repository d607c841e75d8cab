const waits = [100, 300, 1000]; // ms before it is tried once more

/** Tries what may be refused for a moment; the last refusal is thrown. */
export async function triedAgain<T>(work: () => Promise<T>): Promise<T> {
  for (const ms of waits)
    try {
      return await work();
    } catch {
      await new Promise((later) => setTimeout(later, ms));
    }
  return work();
}
