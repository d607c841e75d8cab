import { browser } from 'wxt/browser';
import { originOf } from '../../../src/use/acts/matters/sites.ts';
import { type Asker, admitted } from '../../../src/use/acts/requests.ts';

type Sender = chrome.runtime.MessageSender;

/** A page of the extension, or a script of ours in a page: the browser says which, not the message. */
const askerOf = ({ url = '' }: Sender): Asker =>
  url.startsWith((browser.runtime as typeof chrome.runtime).getURL('')) ? 'view' : 'page';

/** Lets a request through to its answer, as parsed; refuses whoever may not ask it. */
export const admit = <N extends Parameters<typeof admitted>[0]>(name: N, request: unknown, sender: Sender) =>
  admitted(name, request, askerOf(sender));

/** The site a script of ours stands on, by the browser's word; a frame without an address is its page's. */
export const siteOfSender = ({ origin, url = '', tab }: Sender): string | undefined =>
  [origin, originOf(url), originOf(tab?.url ?? '')].find((each) => each !== undefined && each !== 'null');
