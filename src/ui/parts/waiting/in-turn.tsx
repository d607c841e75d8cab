import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * Draws its children one task later than what stands before it where `late`, so that a place with much to work out
 * answers the press first.
 */
export function InTurn({ late, children }: { late: boolean; children: ComponentChildren }) {
  const [due, setDue] = useState(!late);
  useEffect(() => {
    if (due) return;
    const timer = setTimeout(() => setDue(true));
    return () => clearTimeout(timer);
  }, [due]);
  return due ? <>{children}</> : null;
}
