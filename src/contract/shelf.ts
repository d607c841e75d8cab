import type { BringStep } from '../core/amounts/brings.ts';
import type { Answer } from '../core/judge/finding.ts';
import type { PageText, ProductClues } from './messages.ts';
import type { Drawing, DrawnElement } from './paint-order.ts';

/** dictionary/shelf.json, `addresses`: which parts of a shop's addresses say what. Expressions match whole parameter names. */
export type AddressFacts = {
  /** Parameters that only tell the shop where a visitor came from. */
  tracking: string[];
  /** Parameters that choose a size or shade of the same product. */
  variant: string[];
  /** Words of a path that stand before a product's own name. */
  product: string[];
  /** Stretches of a path that only say on which shelf the product was met. */
  within: string[];
  /** First words of paths that lead to no product. */
  elsewhere: string[];
};

/** dictionary/shelf.json. */
export type ShelfFacts = {
  addresses: AddressFacts;
  cards: {
    /** Fewer cards of one build are no shelf. */
    least: number;
    /** More cards of one page are left alone. */
    most: number;
    /** Elements between a link and the card around it. */
    deepest: number;
    /** Expression of signs that mark a price. */
    money: string;
  };
  manners: Manners;
  pages: {
    /** A page with fewer letters is built by script. */
    thinBelow: number;
    /** A page with fewer letters that asks for a password asks to log in first. */
    loginBelow: number;
  };
  remembered: {
    /** Products remembered at most; the ones met longest ago go first. */
    most: number;
    /** Letters of the longest label that is remembered. */
    longestLabel: number;
    /** Letters of all of them: the browser's room (10 MB) is for what the user keeps. */
    letters: number;
  };
  sources: string[];
};

/** How the shop is asked for its pages. */
export type Manners = {
  perPress: number;
  atOnce: number;
  /** Milliseconds between the starts of two requests. */
  gapMs: number;
  bytesAtMost: number;
  secondsAtMost: number;
  /** A shop that asks for a longer pause than this is not read again on this page. */
  waitAtMostMinutes: number;
};

/** Why a page of a shelf says nothing. */
export const unreadReasons = [
  'not-found', // 404, 410
  'refused', // 403 and other 4xx
  'shop-broken', // 5xx other than 503
  'elsewhere', // redirected off the shop, or could not be reached
  'offline',
  'too-large',
  'too-slow',
  'no-page', // no HTML
  'robots', // the shop asks programs not to read it
  'login',
  'no-list',
  'several', // a set: several lists, none of which is named like the card
  'by-script', // the page builds what it shows by script
  'other-product',
  'cancelled',
  'shop-busy', // 429, 503
] as const;
export type UnreadReason = (typeof unreadReasons)[number];

/** Why a press ended before its last page. */
export const endings = [
  'cancelled',
  'shop-busy',
  'offline',
  'unreachable', // robots.txt, or several pages in a row
  'unanswered', // the extension itself: it was updated, say
] as const;
export type EndedWhy = (typeof endings)[number];

/** How one product of a shelf stands for the page; what was read, and when, the background knows. */
export type CardState = {
  address: string;
  name: string;
  state: 'met' | 'reading' | 'failed';
  why?: UnreadReason;
};

/** What a shelf draws for one product. */
export type ShelfMark = {
  address: string;
  /** Its label is known. */
  read: boolean;
  mark: DrawnElement;
  /** What the mark says, for who cannot see it. */
  label: string;
  card: Drawing[];
  /** Filters that let it pass. */
  passes: string[];
};

/** How the shelf as a whole stands, for its bar. */
export type BarState = {
  open: boolean;
  /** Products on the page, those read, and those a press would ask the shop for. */
  products: number;
  read: number;
  left: number;
  failed: Partial<Record<UnreadReason, number>>;
  /** While a press runs: asked for so far, of how many. */
  running?: { done: number; of: number };
  ended?: EndedWhy;
  /** Moment before which the shop does not want to be asked, ms since 1970. */
  again?: number;
  /** The user was told what a press does, and pressed before. */
  told: boolean;
  filters: string[];
  /** By filter: products that pass it alone. */
  passing: Record<string, number>;
  hides: boolean;
};

export type ShelfDrawn = { lang: string; dir: 'ltr' | 'rtl'; marks: ShelfMark[]; bar: Drawing[] };

/** A page of the shop that came after a press, as letters. */
export type ShelfPage = {
  address: string;
  /** What the card calls the product. */
  name: string;
  /** Where the shop's own redirects led. */
  at: string;
  texts: PageText[];
  clues: ProductClues;
  /** Letters the page shows, and whether it asks for a password. */
  letters: number;
  asksPassword: boolean;
};

/** What came of an act on a card: what to say of it, ready to show, with the key of its undo. */
export type ShelfActed = { said: Drawing[] };

/** One product of a shelf as the panel's table shows it; what is not known is left out. */
export type ShelfRow = {
  address: string;
  name: string;
  state: 'read' | CardState['state'];
  why?: UnreadReason;
  /** It is for another place than hair: read, not judged. */
  notForHair?: true;
  /** The worst answer for the person in use. */
  answer?: Answer;
  protein?: BringStep | 'unknown';
  moisture?: BringStep | 'unknown';
  /** Price of 100 ml or g. */
  per100?: number;
  currency?: string;
};
