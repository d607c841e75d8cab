/**
 * Reading a hostile document. A page may name a form field or an image `parentNode`, `localName` or `body`
 * and so shadow the real property; the prototype still has it, and what should be a string can be checked.
 */
export function native<T extends object, K extends keyof T>(target: T, key: K): T[K] {
  const value: unknown = Reflect.get(Object.getPrototypeOf(target), key, target);
  return (typeof value === 'function' ? value.bind(target) : value) as T[K];
}

export const documentOf = (root: Node): Document =>
  root.nodeType === 9 ? (root as Document) : native(root, 'ownerDocument')!;

/** Lower-case tag name; a form whose name is shadowed is still a form. */
export const tagOf = (element: Element): string => {
  const name: unknown = element.localName;
  return typeof name === 'string' ? name : 'form';
};

/** Parent element, crossing an open shadow root to its host. */
export function parentOf(node: Node): Element | null {
  const parent = native(node, 'parentNode');
  if (!parent) return null;
  if (parent.nodeType === 11) return (parent as ShadowRoot).host ?? null;
  return parent.nodeType === 1 ? (parent as Element) : null;
}

export function attribute(element: Element, name: string): string {
  const value: unknown =
    typeof element.getAttribute === 'function'
      ? element.getAttribute(name)
      : native(element, 'getAttribute')(name);
  return typeof value === 'string' ? value : '';
}

/** Text of a subtree, white space as single spaces, cut at `most` letters. Forces no layout. */
export const textOf = (node: Node | null | undefined, most = 200): string =>
  String((node && native(node, 'textContent')) ?? '')
    .slice(0, most * 4)
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, most);
