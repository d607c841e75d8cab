import { ours } from '../ours.ts';
import { native, parentOf } from './dom.ts';
import { shadowRootsIn } from './shadow-roots.ts';

/**
 * What came into the document since the last telling: added subtrees, or so much that one pass is cheaper.
 * `restored`: the browser kept the page while another was shown in its place.
 */
export type Came = { added: Element[] } | 'much' | 'moved-on' | 'restored' | 'changed';

const much = 1000; // added elements above which one pass over the document is cheaper than many small ones
const settle = 120; // ms without which a burst of changes is not looked at yet
const patience = 1000; // ms after which a burst without a pause is looked at all the same
const rest = 25; // a look that took t ms is followed by rest of at least 25 t: at most 4 % of main-thread time

/**
 * Watches a document for lists that arrive later and for pages that move on without loading: one observer,
 * added subtrees only, open shadow roots too. `look` is called when things have settled; it is timed, and
 * called the more seldom the longer it takes. Nothing is called after the signal.
 */
export function watch(win: Window & typeof globalThis, signal: AbortSignal, look: (came: Came) => void) {
  const doc = win.document;
  const roots = new WeakSet<ShadowRoot>();
  let marked = new Set<Element>();
  let added: Element[] = [];
  let count = 0;
  let changed = false;
  let movedOn: 'moved-on' | 'restored' | undefined;
  let timer = 0;
  let since = 0;
  let restUntil = 0;

  const cameNow = (): Came => {
    if (movedOn) return movedOn;
    if (changed || [...marked].some((element) => !element.isConnected)) return 'changed';
    return count > much ? 'much' : { added: outermost(added) };
  };

  const restAfter = (took: number) => {
    restUntil = Math.max(restUntil, performance.now() + took * rest);
  };

  const flush = () => {
    timer = 0;
    const came = cameNow();
    const fresh = movedOn || came === 'much' ? [doc] : added;
    added = [];
    count = 0;
    changed = false;
    movedOn = undefined;
    if (signal.aborted) return;
    const from = performance.now();
    for (const root of fresh) if (root.isConnected) seeRoots(root);
    look(came);
    restAfter(performance.now() - from);
  };

  const schedule = () => {
    const now = performance.now();
    if (!timer) since = now;
    else if (now - since > patience) return;
    win.clearTimeout(timer);
    timer = win.setTimeout(flush, Math.max(settle, restUntil - now));
  };

  const isMarked = (node: Node) => node.nodeType === 1 && marked.has(node as Element);

  const observer = new MutationObserver((records) => {
    if (count <= much)
      for (const { type, target, addedNodes, removedNodes } of records) {
        if (type === 'characterData' || isMarked(target)) changed = true;
        for (const node of addedNodes)
          if (node.nodeType === 1) {
            if (ours.hosts.has(node)) continue;
            added.push(node as Element);
            count += 1 + native(node as Element, 'childElementCount');
          } else if (node.nodeType === 3 && target.nodeType === 1) added.push(target as Element);
        if (removedNodes.length > 0 && marked.size > 0) schedule();
        if (count > much) break;
      }
    if (changed || added.length > 0) schedule();
  });
  observer.observe(doc, { childList: true, subtree: true });

  /** Observes open shadow roots, which no observer of the document reaches; says whether there are new ones. */
  const seeRoots = (within: Document | Element): boolean => {
    const met = shadowRootsIn(within).filter((root) => !roots.has(root));
    for (const root of met) {
      roots.add(root);
      observer.observe(root, { childList: true, subtree: true });
    }
    return met.length > 0;
  };
  // Looking through a whole page for them can wait until the page has time.
  const idle = win.requestIdleCallback?.(() => seeRoots(doc) && look('changed'));

  const moveOn = ({ type }: Event) => {
    movedOn = type === 'pageshow' ? 'restored' : (movedOn ?? 'moved-on');
    schedule();
  };
  const { navigation } = win as Window & { navigation?: EventTarget };
  navigation?.addEventListener('navigatesuccess', moveOn, { signal });
  win.addEventListener('popstate', moveOn, { signal });
  win.addEventListener('pageshow', (event) => event.persisted && moveOn(event), { signal });
  signal.addEventListener('abort', () => {
    observer.disconnect();
    win.clearTimeout(timer);
    if (idle) win.cancelIdleCallback(idle);
  });

  return {
    /** Something changed that is not heard here: looks when things have settled. */
    stir() {
      changed = true;
      schedule();
    },
    /** A look that went on after `look` returned took so long, in ms. */
    rest: restAfter,
    /** Hears every change of letters within these elements too, and their going; replaces those marked before. */
    mark(elements: Iterable<Element>) {
      const before = marked;
      marked = new Set(elements);
      for (const element of marked)
        if (!before.has(element))
          observer.observe(element, { childList: true, characterData: true, subtree: true });
    },
  };
}

/** Elements still in the document, without those inside another of them. */
function outermost(elements: Element[]): Element[] {
  const all = new Set(elements.filter((element) => element.isConnected));
  return [...all].filter((element) => {
    for (let at = parentOf(element); at; at = parentOf(at)) if (all.has(at)) return false;
    return true;
  });
}
