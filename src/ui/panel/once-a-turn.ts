/** Has work done once at the end of a turn, however often it was asked for. */
export function onceATurn(work: () => void): () => void {
  let due = false;
  return () => {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      work();
    });
  };
}
