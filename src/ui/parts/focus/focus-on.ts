import { useEffect } from 'preact/hooks';

/** Gives the focus to an element that may not have it by itself: a heading that was gone to. False where there is none. Scrolled to unless told not to. */
export function focusOn(element: Element | null | undefined, preventScroll = false): boolean {
  if (!(element instanceof HTMLElement)) return false;
  if (!element.matches('a, button, input, select, textarea, summary, [tabindex]')) element.tabIndex = -1;
  element.focus({ preventScroll });
  return true;
}

/** Once something is opened, the focus goes to its heading. */
export function useFocusOn(opened: unknown, heading: string) {
  useEffect(() => {
    if (opened) focusOn(document.querySelector(heading));
  }, [opened]);
}
