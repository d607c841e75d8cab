/** Gives the focus to an element that may not have it by itself: a heading that was gone to. False where there is none. */
export function focusOn(element: Element | null | undefined): boolean {
  if (!(element instanceof HTMLElement)) return false;
  if (!element.matches('a, button, input, select, textarea, summary, [tabindex]')) element.tabIndex = -1;
  element.focus({ preventScroll: false });
  return true;
}
