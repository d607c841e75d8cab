import type { Finder } from '../finder.ts';
import { namesAList } from '../names/headings.ts';
import { fold } from './letters.ts';

type Held = { [key: string]: unknown };
/** What a value stands for: some states are one array, whose values are places in it. */
type At = (value: unknown) => unknown;

const mostObjects = 30_000; // of one block
const mostWithin = 3000; // objects of one product
const mostProducts = 3; // objects called as the page's heading is
const mostDepth = 40;
const mostOpened = 6; // depth at which a string may hold a state of its own
const mostWords = 8; // depth of formatted text
const mostNames = 300; // of one list
const mostValues = 3000; // looked at for one list: places of a state may lead in a circle
const asManyAsOpening = 100; // values, by the time it takes
const longestKey = 60; // letters
const longestText = 20_000;
const shortestName = 4;
const pauseEvery = 100; // objects

const names = ['title', 'name'];
const called = [...names, 'label', 'heading', 'key', 'code', 'attribute', 'question'];
const worded = ['value', 'content', 'text', 'body', 'html', 'description', 'answer', 'values', 'children'];
/** Keys of goods: an object with one of them and a name of its own is another product. */
const sold = ['handle', 'slug', 'sku', 'price', 'url', 'href', 'variants', 'gtin', 'ean'];

const lettersOf = (text: string) => fold(text).replace(/[^\p{L}\p{N}]+/gu, '');

/**
 * What a page that is drawn by scripts says of its own product in its state, and prints nowhere: what stands there under
 * a word for ingredients, one list a line. Only the object that is called as the page's heading is counts, for a state
 * tells of other products, of filters and of what is left out too. Pauses now and then.
 */
export function* stateLines(
  data: readonly string[],
  heading: string,
  finder: Finder,
): Generator<void, string> {
  const own = lettersOf(heading);
  const found = new Set<string>();
  if (own.length < shortestName) return '';
  const isOwn = (held: Held, at: At) =>
    names.some((key) => isText(at(held[key])) && lettersOf(at(held[key]) as string) === own);
  for (const block of data) {
    yield;
    const root = parsed(block);
    const at: At = (value) =>
      Array.isArray(root) && Number.isInteger(value) ? root[value as number] : value;
    let seen = 0;
    let products = 0;
    for (const held of objectsIn(root, at, mostObjects)) {
      if (++seen % pauseEvery === 0) yield;
      if (products < mostProducts && isOwn(held, at)) {
        products++;
        yield* listsOf(held, isOwn, at, finder, found);
      }
    }
  }
  return [...found].map((text) => `Ingredients: ${text}`).join('\n\n');
}

const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= longestText;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Every object of a state, outer before inner, without those left out; a string that holds a state is opened. */
function* objectsIn(
  root: unknown,
  at: At,
  most: number,
  leftOut: (held: Held) => boolean = () => false,
): Generator<Held> {
  const open: [unknown, number][] = [[root, 0]];
  const met = new Set<unknown>();
  while (open.length > 0 && met.size < most) {
    const [value, depth] = open.pop()!;
    if (met.has(value)) continue; // a text that many lead to is opened once
    const held = typeof value === 'string' && depth < mostOpened ? opened(value) : value;
    if (typeof held !== 'object' || held === null || depth > mostDepth || met.has(held)) continue;
    met.add(value).add(held);
    if (!Array.isArray(held)) {
      if (leftOut(held as Held)) continue;
      yield held as Held;
    }
    const isPlaces = depth === 0 && Array.isArray(held); // their own values are no places
    for (const inner of Object.values(held).reverse()) open.push([isPlaces ? inner : at(inner), depth + 1]);
  }
}

const opened = (value: string): unknown => (/^\s{0,9}[{[]/.test(value) ? parsed(value) : value);

/** Gathers the texts of one product that stand under a word for ingredients. */
function* listsOf(
  product: Held,
  isOwn: (held: Held, at: At) => boolean,
  at: At,
  finder: Finder,
  found: Set<string>,
): Generator<void, void> {
  const keys = new Map<string, boolean>();
  const heads = (words: string) => {
    const is = keys.get(words) ?? namesAList(spaced(words), finder);
    keys.set(words, is);
    return is;
  };
  const add = (value: unknown) => {
    const words = wordsIn(value, at, { left: mostValues }).filter((part) => /\p{L}/u.test(part));
    const plain = words.map((part) => part.replace(tags, ' ').replace(/\s+/g, ' ').trim());
    if (plain.length > 0) found.add(plain.slice(0, mostNames).join(', '));
  };
  const isOther = (held: Held) =>
    held !== product &&
    sold.some((key) => key in held) &&
    names.some((key) => isText(at(held[key]))) &&
    !isOwn(held, at);
  let seen = 0;
  for (const held of objectsIn(product, at, mostWithin, isOther)) {
    if (++seen % pauseEvery === 0) yield;
    const told = worded.filter((key) => key in held);
    const title = called.map((key) => at(held[key])).find(isText);
    if (told.length > 0 && title !== undefined && title.length <= longestKey && heads(title))
      for (const key of told) add(at(held[key]));
    for (const [key, value] of Object.entries(held))
      if (key.length <= longestKey && heads(key)) add(at(value));
  }
}

/** "fullIngredients", "inci_list": as words. */
const spaced = (key: string) => key.replace(/(?<=\p{Ll})(?=\p{Lu})|[_.-]/gu, ' ');
const tags = /<[^<>]{0,400}>/g;

/** A text, the names in an array, the letters of formatted text; no more of it than `looks` has left. */
function wordsIn(value: unknown, at: At, looks: { left: number }, depth = 0): string[] {
  if (depth > mostWords || looks.left-- <= 0) return [];
  if (isText(value)) {
    const inner = opened(value);
    if (inner !== value) looks.left -= asManyAsOpening;
    return typeof inner === 'object' ? wordsIn(inner, at, looks, depth + 1) : [value];
  }
  if (Array.isArray(value))
    return value.slice(0, mostNames).flatMap((each) => wordsIn(at(each), at, looks, depth + 1));
  if (typeof value !== 'object' || value === null) return [];
  const key = ['inci', ...names, ...worded].find((each) => each in value);
  return key ? wordsIn(at((value as Held)[key]), at, looks, depth + 1) : [];
}
