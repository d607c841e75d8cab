/** What came into the document since the last telling: added subtrees, or so much that one pass is cheaper. */
export type Came = { added: Element[] } | 'much' | 'moved-on' | 'changed';

const much = 1000; // added elements above which one pass over the document is cheaper than many small ones
const settle = 120; // ms without which a burst of changes is not looked at yet
const patience = 1000; // ms after which a burst without a pause is looked at all the same
const rest = 25; // a pass that took t ms is followed by rest of at least 25 t: at most 4 % of main-thread time

/**
 * Watches a document for lists that arrive later and for pages that move on without loading: one observer,
 * added subtrees only. `look` is called when things have settled; it is timed, and called the more seldom
 * the longer it takes. Nothing is called after the signal.
 */
export function watch(win: Window, signal: AbortSignal, look: (came: Came) => void) {
  const doc = win.document;
  let added: Element[] = [];
  let count = 0;
  let changed = false;
  let movedOn = false;
  let timer = 0;
  let since = 0;
  let restUntil = 0;
  const marked = new WeakSet<Node>();

  const flush = () => {
    timer = 0;
    const came: Came = movedOn
      ? 'moved-on'
      : count > much
        ? 'much'
        : changed
          ? 'changed'
          : { added: outermost(added) };
    added = [];
    count = 0;
    changed = false;
    movedOn = false;
    if (signal.aborted) return;
    const from = performance.now();
    look(came);
    observer.takeRecords();
    restUntil = performance.now() + (performance.now() - from) * rest;
  };

  const schedule = () => {
    const now = performance.now();
    if (!timer) since = now;
    else if (now - since > patience) return;
    win.clearTimeout(timer);
    timer = win.setTimeout(flush, Math.max(settle, restUntil - now));
  };

  const observer = new MutationObserver((records) => {
    if (count <= much) {
      for (const { type, target, addedNodes, removedNodes } of records) {
        if (type === 'characterData' || marked.has(target)) changed = true;
        for (const node of addedNodes) {
          if (node instanceof Element) {
            if (node.localName === 'strandline-label') continue;
            added.push(node);
            count += 1 + node.childElementCount;
          } else if (node.nodeType === Node.TEXT_NODE && target instanceof Element) added.push(target);
        }
        if (!changed && removedNodes.length > 0)
          for (const node of removedNodes) changed ||= marked.has(node);
        if (count > much) break;
      }
    }
    if (changed || added.length > 0) schedule();
  });
  observer.observe(doc, { childList: true, subtree: true });

  const moveOn = () => {
    movedOn = true;
    schedule();
  };
  const { navigation } = win as Window & { navigation?: EventTarget };
  navigation?.addEventListener('navigatesuccess', moveOn, { signal });
  win.addEventListener('popstate', moveOn, { signal });
  win.addEventListener('pageshow', (event) => event.persisted && moveOn(), { signal });
  signal.addEventListener('abort', () => {
    observer.disconnect();
    win.clearTimeout(timer);
  });

  return {
    /** Also hears changes of letters within these elements, and within these shadow roots. */
    mark(elements: Iterable<Element>, roots: Iterable<ShadowRoot>) {
      for (const element of elements) {
        if (marked.has(element)) continue;
        marked.add(element);
        observer.observe(element, { childList: true, characterData: true, subtree: true });
      }
      for (const root of roots) {
        if (marked.has(root)) continue;
        marked.add(root);
        observer.observe(root, { childList: true, subtree: true });
      }
    },
  };
}

/** Elements still in the document, without those inside another of them. */
function outermost(elements: Element[]): Element[] {
  const all = new Set(elements.filter((element) => element.isConnected));
  return [...all].filter((element) => {
    for (let at = element.parentElement; at; at = at.parentElement) if (all.has(at)) return false;
    return true;
  });
}
