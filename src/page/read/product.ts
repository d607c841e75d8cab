import type { ProductClues } from '../../contract/messages.ts';
import { attribute, native, tagOf, textOf } from './dom.ts';
import { finished, type Work } from './in-slices.ts';

const most = { data: 500_000, words: 2000, each: 300 };
const telling = 'h1,[itemprop],script[type$=json],form option:checked,form input[type="radio"]:checked';
const trail = ['div', 'nav', 'ol', 'ul'].map(
  (tag) => `${tag}[class*="breadcrumb" i],${tag}[aria-label*="breadcrumb" i]`,
);

/**
 * What a document may say of the one product it shows, as it stands there: `factsOf` makes sense of it. Pauses
 * between questions that the browser walks the whole page for.
 */
export function* gatheringClues(document: Document): Work<ProductClues> {
  const said: ProductClues['said'] = {};
  const clues = { data: [] as string[], properties: [] as [string, string][], chosen: [] as string[] };
  const hear = (name: string, words: string) => {
    if (name && words) said[name] ??= words.slice(0, most.words);
  };
  const root = native(document, 'documentElement');
  if (root) hear('language', attribute(root, 'lang'));
  for (const meta of native(document, 'head')?.querySelectorAll('meta,link[rel=canonical]') ?? []) {
    const name = attribute(meta, 'property') || attribute(meta, 'name') || attribute(meta, 'rel');
    hear(name, attribute(meta, 'content') || attribute(meta, 'href'));
  }
  const headings: Element[] = [];
  let room = most.data;
  for (const element of native(document, 'querySelectorAll')(telling)) {
    const tag = tagOf(element);
    const property = attribute(element, 'itemprop');
    if (tag === 'h1') headings.push(element);
    if (tag === 'script') {
      const block = element.textContent ?? '';
      if (block.length > room) continue;
      room -= block.length;
      clues.data.push(block);
    } else if (tag === 'option' || tag === 'input') {
      if (clues.chosen.length < most.each)
        clues.chosen.push(textOf(element, 60) || attribute(element, 'value').slice(0, 60));
    } else if (property) {
      const content = attribute(element, 'content');
      if (content && clues.properties.length < most.each) clues.properties.push([property, content]);
      if (native(element, 'closest')('[itemtype*="schema.org/Product"]'))
        hear(property, content || textOf(element, 120));
    }
  }
  yield;
  const heading = headings.find((each) => native(each, 'closest')('main')) ?? headings[0];
  return {
    ...clues,
    base: String(native(document, 'baseURI')),
    heading: textOf(heading, 160),
    title: String(native(document, 'title')),
    said,
    near: textOf(heading && holderOf(heading), 1500),
    crumbs: textOf(native(document, 'querySelector')(trail.join())),
  };
}

/** The same in one go. */
export const readClues = (document: Document): ProductClues => finished(gatheringClues(document));

const holderOf = (heading: Element): Node => {
  const parent = native(heading, 'parentNode') ?? heading;
  return native(parent, 'parentNode') ?? parent;
};
