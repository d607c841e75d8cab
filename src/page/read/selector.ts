/** Names that look made for one page or one build: digits, or a jumble of letters. */
const passing = /\d|^[a-z]+[A-Z].*[A-Z]|__|^css-|^sc-/;
const lasting = (name: string) => name.length > 1 && !passing.test(name);

/**
 * A selector for an element that holds on other pages of the same shop too: lasting ids and classes first,
 * its place among its kind only where they do not tell it apart.
 */
export function selectorOf(element: Element): string {
  const parts: string[] = [];
  const root = element.ownerDocument;
  for (let at: Element | null = element; at && at !== root.documentElement; at = at.parentElement) {
    if (at.id && lasting(at.id)) {
      parts.unshift(`#${CSS.escape(at.id)}`);
      break;
    }
    const classes = [...at.classList].filter(lasting).slice(0, 2);
    const part = at.localName + classes.map((name) => `.${CSS.escape(name)}`).join('');
    const alike = [...(at.parentElement?.children ?? [])].filter((each) => each.localName === at?.localName);
    const plain = alike.filter((each) => each.matches(part)).length === 1;
    parts.unshift(plain ? part : `${part}:nth-of-type(${alike.indexOf(at) + 1})`);
    if (root.querySelectorAll(parts.join(' > ')).length === 1) break;
  }
  return parts.join(' > ');
}
