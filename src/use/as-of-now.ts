/**
 * Has something asked so that whoever asks gets what stands at that moment or later: what is under way may have been
 * asked before, so it is asked once more after it, for all who came meanwhile.
 */
export function asOfNow(ask: () => Promise<void>): () => Promise<void> {
  let underWay: Promise<void> | undefined;
  let next: Promise<void> | undefined;

  return function asked(): Promise<void> {
    if (underWay) {
      const anew = () => {
        next = undefined;
        return asked();
      };
      next ??= underWay.then(anew, anew);
      return next;
    }
    underWay = ask().finally(() => {
      underWay = undefined;
    });
    return underWay;
  };
}
