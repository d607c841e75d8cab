import { ours } from '../ours.ts';
import { native } from './dom.ts';

/** Tags that are most of a page: a host of a shadow root is one of them only where it holds nothing else. */
const common = 'div,span,a,li,p,img,ul,button,path,svg,option,td,tr,b,i,br,input,script';

/** Open shadow roots of and under `root`, nested ones too; ours is none of them. */
export function shadowRootsIn(root: Document | ShadowRoot | Element): ShadowRoot[] {
  const found: ShadowRoot[] = [];
  const look = (element: Element) => {
    const shadow: unknown = !ours.hosts.has(element) && element.shadowRoot;
    if (shadow && (shadow as Node).nodeType === 11)
      found.push(shadow as ShadowRoot, ...shadowRootsIn(shadow as ShadowRoot));
  };
  if (root.nodeType === 1) look(root as Element);
  for (const element of native(root as Element, 'querySelectorAll')(`:not(${common}),div:empty,span:empty`))
    look(element);
  return found;
}
