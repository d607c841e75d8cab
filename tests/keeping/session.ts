import { slowArea } from './area.ts';

/** The browser's session storage: as its other area, but asked for one key or for all. */
export function slowSession(quota = 10_000_000) {
  const { area, failNext } = slowArea({}, { quota });
  return {
    get: (key: string | null) => area.get(key === null ? null : [key]),
    set: area.set,
    remove: area.remove,
    failNext,
  };
}
