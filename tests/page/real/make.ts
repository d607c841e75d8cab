// A list of ours in the markup of strangers: where a saved page prints a recipe's ingredients, names of one label take
// their place, and the recipe's name gives way to a product's. Products, shops and sentences here are invented.
import { formula } from '../other/names.ts';
import { type Roll, rolled } from '../other/roll.ts';
import type { Changes } from './changes.ts';
import { nodesIn, type Printing, printing, printingsOf, textsIn } from './host.ts';
import type { Saved } from './stated.ts';

export type Host = Saved & {
  document: Document;
  printings: Printing[];
  /** Elements that print the recipe's name, and those that print what to do. */
  names: Element[];
  told: Element[];
};

export const hostOf = (document: Document, saved: Saved): Host => ({
  ...saved,
  document,
  printings: printingsOf(document, saved.ingredients),
  names: printing(document, [saved.title]),
  told: printing(document, saved.steps),
});

const products = [
  'Marram Curl Cream',
  'Sandbar Conditioner',
  'Driftline Shampoo',
  'Eelgrass Leave-in Spray',
  'Saltbox Styling Gel',
  'Fathom Hair Mask',
];
const usage = [
  'Work through wet lengths with your fingers and rinse after three minutes.',
  'Use as often as you wash your hair.',
  'A little goes a long way: begin with the size of a coin.',
  'Avoid contact with the eyes.',
];
// How labels are headed in the languages of the hosts; those of other languages are headed in English.
const headings: Record<string, string> = {
  da: 'Ingredienser',
  de: 'Inhaltsstoffe',
  en: 'Ingredients',
  es: 'Ingredientes',
  fr: 'Ingrédients',
  hu: 'Összetevők',
  it: 'Ingredienti',
  nb: 'Ingredienser',
  nl: 'Ingrediënten',
  no: 'Ingredienser',
  pl: 'Składniki',
  pt: 'Ingredientes',
  sv: 'Ingredienser',
  tr: 'İçindekiler',
};
const headingOf = ({ document }: Host): string =>
  headings[document.documentElement.getAttribute('lang')?.slice(0, 2).toLowerCase() ?? ''] ?? 'Ingredients';

/** The recipe's name gives way to a product's; all else of the page stays as it is. */
function named({ document, title, names }: Host, roll: Roll, { say }: Changes): string {
  const product = roll.pick(products);
  for (const element of names) say(longestIn(element), product);
  const head = document.querySelector('title');
  if (head && title) say(head, (head.textContent ?? '').replace(title, product));
  return product;
}

/** What a shop would not have: the recipe's data, its path, what to do with it. */
function asShop(host: Host, roll: Roll, { say, remove }: Changes, product: string): void {
  const { document } = host;
  const gone =
    'script[type="application/ld+json"],[itemprop][content],meta[name="description"],meta[property^="og:"],:is(nav,ol,ul,div)[class*="breadcrumb" i],:is(nav,ol,ul,div)[aria-label*="breadcrumb" i]';
  for (const element of document.querySelectorAll(gone)) remove(element);
  say(document.querySelector('title'), `${product} | Pebble & Tern`);
  for (const element of host.told) say(longestIn(element), roll.pick(usage));
}

const longestIn = (node: Node): Text | undefined =>
  textsIn(node).reduce<Text | undefined>(
    (best, text) => (text.data.trim().length > (best?.data.trim().length ?? 0) ? text : best),
    undefined,
  );

/** Headings of parts of the recipe go: a label has none. */
function withoutParts({ holder, items }: Printing, { say }: Changes): void {
  const own = new Set<Text>(items.flatMap(textsIn));
  const all = textsIn(holder);
  const [first, last] = [all.findIndex((text) => own.has(text)), all.findLastIndex((text) => own.has(text))];
  const between = all.slice(first, last).filter((text) => !own.has(text));
  const like = new Set(between.map(settingOf));
  const before = all.slice(0, first).filter((text) => like.has(settingOf(text)));
  for (const text of [...before, ...between]) say(text, '');
}

const settingOf = ({ parentElement }: Text): string =>
  `${parentElement?.nodeName} ${parentElement?.getAttribute('class')}`;

/** The name stands where the longest part of the ingredient stood; elements of amounts and units are left empty. */
function put(item: Node, name: string, { say }: Changes): void {
  const longest = longestIn(item);
  for (const text of textsIn(item)) say(text, text === longest ? name : '');
}

const commas = (names: string[]) => names.join(', ');

function oneEach(host: Host, roll: Roll, changes: Changes): string[] {
  const names = formula(roll, host.printings[0]!.items.length);
  for (const printing of host.printings) {
    withoutParts(printing, changes);
    if (printing.items.length !== names.length) changes.remove(printing.holder);
    else for (const [at, item] of printing.items.entries()) put(item, names[at]!, changes);
  }
  return names;
}

function joined(host: Host, roll: Roll, changes: Changes): string[] {
  const names = formula(roll);
  for (const printing of host.printings) {
    withoutParts(printing, changes);
    for (const [at, item] of printing.items.entries())
      if (at === 0) put(item, commas(names), changes);
      else changes.remove(item);
  }
  return names;
}

/** In the longest paragraph of the page, its own ingredients gone. */
function inParagraph(host: Host, roll: Roll, changes: Changes, headed: boolean): string[] | undefined {
  for (const { items } of host.printings) for (const item of items) changes.remove(item);
  const paragraphs = nodesIn(host.document.body, 1).filter(({ nodeName }) => nodeName.toLowerCase() === 'p');
  const lengths = paragraphs.map(({ textContent }) => (textContent ?? '').length);
  const paragraph = paragraphs[lengths.indexOf(Math.max(...lengths))];
  if (!paragraph) return undefined;
  const names = formula(roll);
  changes.say(paragraph, headed ? `${headingOf(host)}: ${commas(names)}` : commas(names));
  return names;
}

type Maker = (host: Host, roll: Roll, changes: Changes) => string[] | undefined;

const shop =
  (maker: Maker): Maker =>
  (host, roll, changes) => {
    asShop(host, roll, changes, named(host, roll, changes));
    return maker(host, roll, changes);
  };
const recipe =
  (maker: Maker): Maker =>
  (host, roll, changes) => {
    named(host, roll, changes);
    return maker(host, roll, changes);
  };

const makers: Record<string, Maker> = {
  'one name an element, as a shop’s': shop(oneEach),
  'one name an element, else a recipe’s': recipe(oneEach),
  'all in the first element, as a shop’s': shop(joined),
  'all in the first element, else a recipe’s': recipe(joined),
  'in the longest paragraph, with a heading': shop((...of) => inParagraph(...of, true)),
  'in the longest paragraph, without one': shop((...of) => inParagraph(...of, false)),
};
export const kindNames = Object.keys(makers);

/** Puts a list into the host; its names, or nothing where the host has no place for it. */
export function putList(kind: string, host: Host, changes: Changes): string[] | undefined {
  const roll = rolled(
    [...kind, ...host.title].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) | 0, 7),
  );
  return makers[kind]!(host, roll, changes);
}
