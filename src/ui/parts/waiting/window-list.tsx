import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { usePrinting } from '../use-printing.ts';

const perChunk = 10;

function Chunk(props: {
  estimate: number;
  count: number;
  draw: () => ComponentChildren;
  first: boolean;
  all: boolean;
}) {
  const element = useRef<HTMLDivElement>(null);
  const height = useRef(props.estimate * props.count);
  const [near, setNear] = useState(props.first || typeof IntersectionObserver === 'undefined');
  useEffect(() => {
    const here = element.current;
    if (!here || typeof IntersectionObserver === 'undefined') return;
    const watch = new IntersectionObserver(
      ([seen]) => {
        // What holds the focus is never taken away.
        const keep = seen?.isIntersecting || here.contains(document.activeElement);
        if (!keep) height.current = here.offsetHeight || height.current;
        setNear(Boolean(keep));
      },
      { rootMargin: '900px 0px' },
    );
    watch.observe(here);
    return () => watch.disconnect();
  }, []);
  const drawn = near || props.all;
  return (
    <div ref={element} role="presentation" style={drawn ? undefined : { height: `${height.current}px` }}>
      {drawn ? props.draw() : null}
    </div>
  );
}

/**
 * A list of any length: only what is near the view is drawn, in runs of ten, so heights may differ.
 * `estimate` is the usual height of an item in pixels.
 */
export function WindowList<T>(props: {
  items: readonly T[];
  keyOf: (item: T) => string;
  label: string;
  estimate: number;
  /** Key of an item that is drawn from the beginning: the one to come back to. */
  near?: string | undefined;
  children: (item: T, index: number) => ComponentChildren;
}) {
  const printing = usePrinting();
  const chunks = Array.from({ length: Math.ceil(props.items.length / perChunk) }, (_, i) => i * perChunk);
  return (
    // biome-ignore lint/a11y/useSemanticElements: runs stand between the list and its items
    <div role="list" class="window-list" aria-label={props.label}>
      {chunks.map((from) => {
        const slice = props.items.slice(from, from + perChunk);
        return (
          <Chunk
            key={from}
            first={from === 0 || slice.some((item) => props.keyOf(item) === props.near)}
            all={printing}
            estimate={props.estimate}
            count={slice.length}
            draw={() =>
              slice.map((item, i) => (
                // biome-ignore lint/a11y/useSemanticElements: see above
                <div
                  role="listitem"
                  key={props.keyOf(item)}
                  aria-setsize={props.items.length}
                  aria-posinset={from + i + 1}
                >
                  {props.children(item, from + i)}
                </div>
              ))
            }
          />
        );
      })}
    </div>
  );
}
