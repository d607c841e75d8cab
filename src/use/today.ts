/** ISO date of the user's own day. */
export const isoDay = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
