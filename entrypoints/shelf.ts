import { browser } from 'wxt/browser';
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { shelfFacts } from '../dictionary/shelf.ts';
import { ask } from '../src/contract/messages.ts';
import { ours } from '../src/page/ours.ts';
import { createHost } from '../src/page/paint/host/host.ts';
import { networkOfBrowser } from '../src/page/shelf/network.ts';
import { startShelf } from '../src/page/shelf/shelf.ts';

const mode = import.meta.env.MODE === 'localhost' ? 'open' : 'closed';

/** Asks the background; an update leaves this script in the page without one, and then all of ours goes. */
const asks: typeof ask = (runtime, name, request) =>
  ask(runtime, name, request).catch((problem: unknown) => {
    if (!browser.runtime?.id) ours.reader?.abort();
    throw problem;
  });

export default defineUnlistedScript(() => {
  ours.shelf = (signal, told) =>
    startShelf({
      window,
      signal,
      told,
      facts: shelfFacts,
      host: () => createHost(mode),
      network: networkOfBrowser(),
      draw: (cards, bar) => asks(browser.runtime, 'shelf', { cards, bar }),
      take: (page) => asks(browser.runtime, 'shelf-page', page),
      act: (address, act, id) => asks(browser.runtime, 'shelf-act', { address, act, id }),
    });
});
