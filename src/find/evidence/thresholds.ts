/**
 * Every number by which a run of names is taken for a list, with its reason. Points are added up: what the names say,
 * what leads to them, how they stand and what the page is about. `npm run coverage -- --why FILE` prints them.
 */

/** Points from which a run is a list: a heading alone does not reach it, a heading and one telling name do. */
export const bar = 1.6;

/** One name of each kind. */
export const namePoints = {
  own: 1.5, // only cosmetics print it: one of them and a heading make a list
  plant: 0.6, // supplements print Latin names too: three of them weigh as much as one telling name
  built: 0.3, // read by its parts, not known
  shared: -0.25, // foods and pills are made of them: ten of them outweigh one telling name
  water: -0.25, // the same
  other: -0.5, // a list knows most of its names
  foreign: -2, // one food, pill or cloth outweighs one telling name
} as const;

/** Telling names prove no more beyond this: many names of one kind stand in articles and glossaries too. */
export const mostForNames = 5;

/** What leads to the names. */
export const leadPoints = {
  heading: 1.5, // "Ingredients": what follows is the list of something
  productName: 1, // "Meadow Bar: …": the page's own product
  label: -5.5, // other words: the names must tell by themselves
  none: -5.5,
  teaser: -8, // "key ingredients": only what reads like a whole list passes
  denial: -Infinity, // what is left out is never a list
} as const;

/** How the names stand. */
export const formPoints = {
  waterFirst: 4, // law orders by amount, so lists begin with water; articles and glossaries do not
  longList: 4, // no shop teases with so many names
  wholeLines: 1, // nothing but names stands in their lines
  nothingElse: 3.5, // a paragraph of names that nothing leads to
  inSentence: -6, // names told in running text
  explained: -2, // each unknown word behind a dash or a full stop: what a name does
  inTitle: -6, // names in a heading element are a title
  alternating: -8, // every second line is no name: a table of what names do
  onlyEdges: -14, // tags, filters, a cloud of words: nothing but links or boxes parts the names
  oneALine: -3, // menus, filters and shelves without a heading print one name a line
  chosen: -20, // boxes to tick beside names: a filter, a question
  links: -9, // the same as links: what others searched for; water first and known names do not outweigh it
  alphabetical: -8, // glossaries, menus; labels go by amount
  weighedOut: -8, // a recipe prints amounts before names
  counted: -8, // "(12)" of a filter, registry numbers of a safety sheet
} as const;

/** What the page says it shows: its name, title and path, and the lines around the names. */
export const aboutPoints = {
  cosmetic: 1,
  allKnown: 0.5, // oils and butters alone are foods too; under a heading of a hair oil's page they are its list
  elsewise: -3, // a recipe, a drug, a feed: telling names must be many
} as const;

/** Share of the names that must be known or built like names. */
export const knownShare = {
  heading: 0.5, // misspelt lists know every second name
  none: 0.65, // without a heading nothing else says so
  built: 0.8, // where none is known: in scripts of few known names “water” stands in a recipe's lines too
} as const;

export const longList = 14; // names of a list so long that it is no choice
export const longListKnown = 0.75; // share of them that are known
export const nothingElse = 0.8; // share of names in a paragraph that holds nothing else: soaps have bases of their own
export const alternating = 0.6; // turns between known and unknown names, of all that could be
export const fewestStrange = 3; // unknown ones that make it a table
export const fewestTelling = 2; // names of a list without a heading that only cosmetics, or Latin, print
export const fewestUnheaded = 5; // names: fewer without a heading are a remark
export const fewestInLines = 8; // names, water first and all known, that are no menu though one stands on each line
export const alphabeticalFrom = 6; // names in order by chance: once in 720
export const outOfOrder = 0.1; // names of an index that its own rules of sorting put elsewhere
export const weighedOut = 0.4; // names with an amount before them, of a recipe's
export const fewestDeclared = 2; // classes of surfactants that the law on detergents asks for
export const fewestSpecies = 3; // plants by name alone: seeds, teas, tables of foods
export const mostOwn = 0.15; // names among them that the finder takes for cosmetic ones
export const besideLetters = 300; // letters beside a very short list that tell what it is part of
export const linesBelow = 6; // lines below a name alone in which another one makes both a choice
export const reach = 6; // lines between a heading and its list
export const allKnown = 3; // names of a list so short that all of them must be known
export const fewestExplained = 6; // names with what each does: fewer are highlights
export const fewestExplainedDry = 8; // the same without water among the first
export const explainedKnown = 0.7; // share of them that are known
