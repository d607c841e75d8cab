import { ours } from '../../ours.ts';
import { doc } from '../doc.ts';
import { native } from '../dom.ts';

/** The one element of ours in the page. Everything we draw lives in its shadow. */
export type Host = {
  /** What holds all that we draw. */
  root: HTMLElement;
  /** Client pixels → our own: where the origin stands, and how much the page scales it. */
  frame(): { x: number; y: number; scale: number };
  /** Puts the host where it can be seen: last in the document, or in the modal dialog that holds one of `near`. */
  attach(near: Element[]): boolean;
  remove(): void;
};

export function createHost(mode: ShadowRootMode, mark = 'data-strandline'): Host {
  // No element of a name of our own: the page could define it, and its constructor is handed the shadow root.
  const host = doc.createElement('div');
  ours.hosts.add(host);
  // Tests look for it.
  if (import.meta.env?.MODE !== 'production' && mode === 'open') host.setAttribute(mark, '');
  const shadow = host.attachShadow({ mode });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(ours.sheet ?? '');
  shadow.adoptedStyleSheets = [sheet];
  const root = doc.createElement('div');
  root.className = 'own';
  shadow.append(root);
  let returns = 0;

  return {
    root,
    frame() {
      const at = root.getBoundingClientRect();
      return { x: at.left, y: at.top, scale: at.width / 100 || 1 };
    },
    attach(near) {
      const holders = near.map((each) => native(each, 'closest')('dialog:modal'));
      const modal = holders.find(Boolean) ?? doc.documentElement;
      if (host.parentNode === modal) return true;
      // A page that throws us out three times does not want us.
      if (!host.isConnected && returns++ > 3) return false;
      modal.append(host);
      // A page may zoom itself; strip and card stand by client pixels.
      root.style.zoom = String(1 / (modal.currentCSSZoom ?? 1));
      return true;
    },
    remove: () => host.remove(),
  };
}
