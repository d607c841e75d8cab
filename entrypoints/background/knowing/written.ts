/** What the build writes here (`wxt.config.ts`), lines of one text each; without a build it is worked out when asked for. */
export const written: Partial<ReturnType<typeof import('./write-ahead.ts').writeAhead>> = {};
