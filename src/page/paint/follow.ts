/** What may have changed: places only, or shapes (line breaks, font, size) too. */
export type Moved = 'moved' | 'reshaped';

/**
 * Says when letters may have moved: scroll of anything, resize, reflow, fonts, transitions, accordions and
 * dialogs, and moves without any of these (by an observer cropped to where the element stood).
 * At most one call a frame; none before the first frame, none after the signal.
 */
export function follow(
  win: Window & typeof globalThis,
  elements: Element[],
  signal: AbortSignal,
  tell: (moved: Moved) => void,
) {
  const doc = win.document;
  let frame = 0;
  let pending: Moved | undefined;
  let animating = 0;

  const ask = (moved: Moved) => {
    if (pending !== 'reshaped') pending = moved;
    frame ||= win.requestAnimationFrame(() => {
      frame = 0;
      const what = pending ?? 'moved';
      pending = undefined;
      if (signal.aborted) return;
      tell(what);
      crop();
      if (animating > performance.now()) ask('reshaped');
    });
  };

  const on = (target: EventTarget, type: string, moved: Moved) =>
    target.addEventListener(type, () => ask(moved), { signal, capture: true, passive: true });
  on(doc, 'scroll', 'moved');
  on(win, 'resize', 'reshaped');
  for (const type of ['toggle', 'close', 'fullscreenchange']) on(doc, type, 'reshaped');
  if (doc.fonts) on(doc.fonts, 'loadingdone', 'reshaped');
  if (win.visualViewport) on(win.visualViewport, 'resize', 'reshaped');
  for (const type of ['transitionrun', 'animationstart'])
    doc.addEventListener(
      type,
      (event) => {
        const target = event.target as Node | null;
        if (!target || !elements.some((element) => target.contains(element))) return;
        animating = performance.now() + 1500;
        ask('reshaped');
      },
      { signal, capture: true, passive: true },
    );

  // Observers tell at once how things stand: what is measured anyway is no news.
  const news = (tell: () => void) => {
    let first = true;
    return () => {
      if (!first) tell();
      first = false;
    };
  };
  const sizes = new win.ResizeObserver(news(() => ask('reshaped')));
  for (const element of new Set([...elements, doc.body])) if (element) sizes.observe(element);

  // An observer whose root is cropped to the element's place tells when it leaves that place.
  let crops: IntersectionObserver[] = [];
  let cropped = '';
  const crop = () => {
    const places = elements.map((element) => element.getBoundingClientRect());
    const key = places.map((at) => [at.left, at.top, at.right, at.bottom].map(Math.round).join()).join(' ');
    if (key === cropped) return;
    cropped = key;
    for (const each of crops) each.disconnect();
    crops = elements.flatMap((element, i) => {
      const at = places[i];
      const { innerWidth, innerHeight } = win;
      if (!at || at.width === 0 || at.bottom < 0 || at.top > innerHeight) return [];
      const margin = [at.top, innerWidth - at.right, innerHeight - at.bottom, at.left];
      const observer = new win.IntersectionObserver(
        news(() => ask('moved')),
        {
          root: doc,
          rootMargin: margin.map((px) => `${-Math.floor(px)}px`).join(' '),
          threshold: [0, 0.5, 0.9, 0.99, 1],
        },
      );
      observer.observe(element);
      return [observer];
    });
  };

  // Hidden now (a closed accordion): tells when it is shown.
  const shown = new win.IntersectionObserver(
    news(() => ask('reshaped')),
    { root: null, threshold: [0, 0.01] },
  );
  for (const element of elements) shown.observe(element);

  signal.addEventListener('abort', () => {
    win.cancelAnimationFrame(frame);
    sizes.disconnect();
    shown.disconnect();
    for (const each of crops) each.disconnect();
  });
  return ask;
}
