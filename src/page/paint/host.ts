import tokens from '../../ui/tokens.css?inline';
import own from './host.css?inline';

/** The one element of ours in the page. Everything we draw lives in its shadow. */
export type Host = {
  root: ShadowRoot;
  /** Client pixels → our own: where the host's origin stands, and how much the page scales it. */
  frame(): { x: number; y: number; scale: number };
  /** Puts the host where it can be seen: last in the document, or in the modal dialog that holds one of `near`. */
  attach(near: Element[]): boolean;
  remove(): void;
};

/** @param css what is drawn in it, as rules of its shadow */
export function createHost(mode: ShadowRootMode, css: string): Host {
  const host = document.createElement('strandline-label');
  const root = host.attachShadow({ mode });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(tokens + own + css);
  root.adoptedStyleSheets = [sheet];
  let returns = 0;

  return {
    root,
    frame() {
      const at = host.getBoundingClientRect();
      return { x: at.left, y: at.top, scale: at.width / 100 || 1 };
    },
    attach(near) {
      const holders = near.map((each) => each.closest('dialog:modal'));
      const modal = holders.find(Boolean) ?? document.documentElement;
      if (host.parentNode === modal) return true;
      // A page that throws us out three times does not want us.
      if (!host.isConnected && returns++ > 3) return false;
      modal.append(host);
      // A page may zoom itself; strip and card stand by client pixels.
      host.style.setProperty('--back', String(1 / (modal.currentCSSZoom ?? 1)), 'important');
      return true;
    },
    remove: () => host.remove(),
  };
}
