import { useEffect, useRef } from 'preact/hooks';
import { focusOn } from '../parts/focus-on.ts';

/**
 * A product opened from its row begins at its top with the focus on its name; closed again, the row stands where it
 * stood and has the focus. `closed` is the row to come back to.
 */
export function useOpened(opened: string | undefined, open: (id: string) => void) {
  const left = useRef<{ id: string; top?: number } | undefined>(undefined);
  const rowOf = (id: string) => document.getElementById(`product-${id}`);
  useEffect(() => {
    if (opened) {
      if (left.current?.id !== opened) left.current = { id: opened };
      scrollTo(0, 0);
      focusOn(document.querySelector('#place .card h3'));
      return;
    }
    if (!left.current) return;
    const { id, top } = left.current;
    left.current = undefined;
    const row = rowOf(id);
    if (row && top !== undefined) scrollBy(0, row.getBoundingClientRect().top - top);
    focusOn(row?.querySelector('.product-name')) || focusOn(document.querySelector('#place h2'));
  }, [opened]);
  return {
    closed: left.current?.id,
    openRow(id: string) {
      const top = rowOf(id)?.getBoundingClientRect().top;
      left.current = { id, ...(top !== undefined && { top }) };
      open(id);
    },
  };
}
