/** Parts of the lists that were found, and found whole: 0…1. */
export function ratesOf(scores: readonly { found: boolean; whole: boolean }[]) {
  const share = (what: 'found' | 'whole') => scores.filter((score) => score[what]).length / scores.length;
  return { found: share('found'), whole: share('whole') };
}
