import { native } from '../dom.ts';
import { isOurs } from './visibility.ts';

const above = ':popover-open,:modal,:fullscreen';

/**
 * Whether a page may have drawn something over an element of ours: around its frame, or in the browser's top layer,
 * where a picture of a button may lie that lets a press fall through. Asked at a press, so that it may take a while.
 */
export const mayBeOverdrawn = (): boolean => window !== window.top || isAbove(document);

function isAbove(tree: Document | ShadowRoot): boolean {
  const query = native(tree as Node as Element, 'querySelectorAll');
  if ([...query(above)].some((each) => !isOurs(each) && !holdsOurs(each))) return true;
  return [...query('*')].some((each) => {
    const shadow = isOurs(each) ? null : shadowOf(each as HTMLElement);
    return shadow && isAbove(shadow);
  });
}

/** The dialog our host was brought into is under it. */
const holdsOurs = (dialog: Element) => [...native(dialog, 'children')].some(isOurs);

/** Closed ones too, as only extensions are told. */
const shadowOf = (element: HTMLElement): ShadowRoot | null | undefined => {
  const { openOrClosedShadowRoot: gecko } = element as { openOrClosedShadowRoot?: ShadowRoot | null };
  return gecko instanceof ShadowRoot ? gecko : globalThis.chrome?.dom?.openOrClosedShadowRoot(element);
};
