const everything = ['https://*/*', '<all_urls>', '*://*/*'];

/** What match patterns that the user granted come to: all sites, and single origins. */
export const allowedBy = (patterns: readonly string[]): { everywhere: boolean; origins: string[] } => ({
  everywhere: patterns.some((pattern) => everything.includes(pattern)),
  origins: patterns
    .filter((pattern) => /^https?:\/\/[^*]+\/\*$/.test(pattern))
    .map((pattern) => pattern.slice(0, -'/*'.length)),
});
