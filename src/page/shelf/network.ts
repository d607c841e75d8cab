import type { ShelfNetwork } from './read-shelf.ts';

/** The way to a shop as the browser gives it: its network, its clock, and waiting that a signal ends. */
export const networkOfBrowser = (): Omit<ShelfNetwork, 'take'> => ({
  fetch: (address, init) => fetch(address, init),
  online: () => navigator.onLine,
  now: () => Date.now(),
  wait: (ms, until) =>
    new Promise((done) => {
      const timer = setTimeout(done, ms);
      until.addEventListener('abort', () => {
        clearTimeout(timer);
        done();
      });
    }),
});
