import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** A drawing that keeps letters one can read: where the panel is narrower than that it scrolls, by the keyboard too. */
export function WideDrawing({ label, children }: { label: string; children: ComponentChildren }) {
  const box = useRef<HTMLElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const here = box.current;
    if (!here || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(() => setScrolls(here.scrollWidth > here.clientWidth + 1));
    watch.observe(here);
    return () => watch.disconnect();
  }, []);
  return (
    <section class="drawing" ref={box} {...(scrolls && { tabIndex: 0, 'aria-label': label })}>
      {children}
    </section>
  );
}
