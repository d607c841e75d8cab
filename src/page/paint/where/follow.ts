import { doc } from '../doc.ts';
import { boxOf } from './letter-boxes.ts';

const types = 'scroll resize toggle close fullscreenchange loadingdone transitionrun animationstart'.split(
  ' ',
);
const animationsLast = 1500; // ms in which shapes are asked for frame by frame

/**
 * Says when letters may have moved (scroll of anything) or changed their shape, line breaks and size too:
 * resize, reflow, fonts, transitions, accordions and dialogs, and moves without any of these (by an observer
 * cropped to where the element stood). At most one call a frame, none after the signal. What comes back asks for one;
 * moves without a sign are told from the first on.
 */
export function follow(elements: Element[], signal: AbortSignal, tell: (reshaped: boolean) => void) {
  let asked: boolean | undefined;
  let reshaped: boolean | undefined;
  let animating = 0;

  const ask = (shapes: boolean) => {
    reshaped ||= shapes;
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      if (signal.aborted) return;
      const what = !!reshaped;
      asked = reshaped = false;
      tell(what);
      crop();
      if (animating > performance.now()) ask(true);
    });
  };

  const hear = ({ type, target }: Event) => {
    if (/^(tr|an)/.test(type)) {
      if (!elements.some((element) => (target as Node).contains(element))) return;
      animating = performance.now() + animationsLast;
    }
    ask(type !== 'scroll');
  };
  for (const target of [window, doc.fonts, visualViewport])
    for (const type of types) target?.addEventListener(type, hear, { signal, capture: true, passive: true });

  // Observers tell at once how things stand: what is measured anyway is no news.
  const news = (shapes: boolean) => {
    let told: boolean | undefined;
    return () => {
      if (told) ask(shapes);
      told = true;
    };
  };
  const sizes = new ResizeObserver(news(true));
  for (const element of [...elements, doc.body]) sizes.observe(element);

  // An observer whose root is cropped to the element's place tells when it leaves that place; one that is not,
  // when an element that is hidden or out of view is shown.
  let crops: IntersectionObserver[] = [];
  let cropped: string | undefined;
  const crop = () => {
    const boxes = elements.map(boxOf);
    const key = JSON.stringify(boxes);
    if (key === cropped) return;
    cropped = key;
    for (const each of crops) each.disconnect();
    crops = boxes.map(({ left, top, right, bottom }, i) => {
      const seen = right > left && bottom > 0 && top < innerHeight;
      const margins = seen ? [top, innerWidth - right, innerHeight - bottom, left] : [0];
      const observer = new IntersectionObserver(news(!seen), {
        root: document,
        rootMargin: margins.map((px) => `${-Math.floor(px)}px`).join(' '),
        threshold: [0, 0.5, 0.9, 0.99, 1],
      });
      observer.observe(elements[i]!);
      return observer;
    });
  };

  signal.addEventListener('abort', () => [sizes, ...crops].map((each) => each.disconnect()));
  return ask;
}
