/** Changes of a document that can be taken back, the last first. */
export function changesOf(document: Document) {
  const back: (() => void)[] = [];
  /** Another text in a text node or an element. */
  function say(node: Node | null | undefined, text: string): void {
    if (!node) return;
    const kept = [...node.childNodes];
    const before = node.nodeValue;
    if (node.nodeType === 3) node.nodeValue = text;
    else (node as Element).replaceChildren(document.createTextNode(text));
    back.push(() => {
      if (node.nodeType === 3) node.nodeValue = before;
      else (node as Element).replaceChildren(...kept);
    });
  }
  function remove(node: Node): void {
    const { parentNode: parent, nextSibling: next } = node;
    if (!parent) return;
    parent.removeChild(node);
    back.push(() => parent.insertBefore(node, next));
  }
  function put(html: string, before: Node): void {
    const holder = document.createElement('div');
    holder.innerHTML = html;
    before.parentNode?.insertBefore(holder, before);
    back.push(() => holder.remove());
  }
  function undo(): void {
    while (back.length > 0) back.pop()!();
  }
  return { say, remove, put, undo };
}
export type Changes = ReturnType<typeof changesOf>;
