/** Whole days from one ISO date (or date-time) to another; negative when `to` is earlier. */
export const daysBetween = (from: string, to: string) =>
  Math.round((Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000);

/** The ISO date `n` days after another. */
export const addDays = (date: string, n: number) =>
  new Date(Date.parse(date.slice(0, 10)) + n * 86_400_000).toISOString().slice(0, 10);

/** Newest first, for ISO dates; plain comparison, since a collator takes long over a log of years. */
export const newestFirst = (a: { date: string }, b: { date: string }) =>
  a.date < b.date ? 1 : a.date > b.date ? -1 : 0;
