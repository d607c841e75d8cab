import { useEffect, useRef } from 'preact/hooks';
import { focusOn } from '../parts/focus/focus-on.ts';

/**
 * A product opened from its row begins at its top with the focus on its name; closed again, the row stands where it
 * stood and has the focus; the row beside it where it was removed. `closed` is the row to come back to.
 */
export function useOpened(opened: string | undefined, open: (id: string) => void) {
  const left = useRef<{ id: string; top?: number; beside?: string | undefined } | undefined>(undefined);
  const rowOf = (id: string) => document.getElementById(`product-${id}`);
  useEffect(() => {
    if (opened) {
      if (left.current?.id !== opened) left.current = { id: opened };
      scrollTo(0, 0);
      focusOn(document.querySelector('#place .card h3'));
      return;
    }
    if (!left.current) return;
    const { id, top, beside } = left.current;
    left.current = undefined;
    const row = rowOf(id);
    if (row && top !== undefined) scrollBy(0, row.getBoundingClientRect().top - top);
    const next = row ?? (beside ? document.getElementById(beside) : undefined);
    focusOn(next?.querySelector('.product-name')) || focusOn(document.querySelector('#place h2'));
  }, [opened]);
  return {
    closed: left.current?.id,
    openRow(id: string) {
      const top = rowOf(id)?.getBoundingClientRect().top;
      const item = rowOf(id)?.closest('[role=listitem]');
      const beside = (item?.nextElementSibling ?? item?.previousElementSibling)?.querySelector(
        '.product',
      )?.id;
      left.current = { id, beside, ...(top !== undefined && { top }) };
      open(id);
    },
  };
}
