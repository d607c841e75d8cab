/** Sent alone into the page: leaves something for our files there, where `src/page/ours.ts` finds it. */
export const leave = (what: { sheet: string; pick?: string }) => {
  const world = globalThis as { [key: symbol]: object | undefined };
  const key = Symbol.for('strandline');
  world[key] ??= {};
  Object.assign(world[key], what);
};
