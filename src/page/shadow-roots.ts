import { native } from './dom.ts';

/** Tags that are most of a page: a host of a shadow root is hardly one of them. */
const common =
  'div,span,a,li,p,img,ul,h2,h3,h4,button,path,svg,option,input,td,tr,b,strong,i,script,label,use,br,g';

/** Open shadow roots under `root`, nested ones too. */
export function shadowRootsIn(root: Document | ShadowRoot | Element): ShadowRoot[] {
  const found: ShadowRoot[] = [];
  for (const element of native(root as Element, 'querySelectorAll')(`:not(${common})`)) {
    const shadow: unknown = element.shadowRoot;
    if (shadow && (shadow as Node).nodeType === 11)
      found.push(shadow as ShadowRoot, ...shadowRootsIn(shadow as ShadowRoot));
  }
  return found;
}
