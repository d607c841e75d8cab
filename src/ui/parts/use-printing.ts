import { useEffect, useState } from 'preact/hooks';

/** Whether the page is on its way to paper, where nothing scrolls. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const [before, after] = [() => setPrinting(true), () => setPrinting(false)];
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    return () => {
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
    };
  }, []);
  return printing;
}
