/**
 * All words the user sees, through one catalogue: English in one JSON file per area (words/en/hair.json
 * holds keys `hair.…`), every other language in one file of src/assets/words. Each is a message in ICU's format.
 */
import type { Arguments } from './arguments.ts';
import compare from './en/compare.json' with { type: 'json' };
import hair from './en/hair.json' with { type: 'json' };
import keeping from './en/keeping.json' with { type: 'json' };
import log from './en/log.json' with { type: 'json' };
import page from './en/page.json' with { type: 'json' };
import panel from './en/panel.json' with { type: 'json' };
import plan from './en/plan.json' with { type: 'json' };
import products from './en/products.json' with { type: 'json' };
import routine from './en/routine.json' with { type: 'json' };
import rules from './en/rules.json' with { type: 'json' };
import settings from './en/settings.json' with { type: 'json' };
import shelf from './en/shelf.json' with { type: 'json' };
import shell from './en/shell.json' with { type: 'json' };
import welcome from './en/welcome.json' with { type: 'json' };
import { type Message, message, type Values, type Word } from './message.ts';

export type { Values } from './message.ts';
export type Catalogue = Record<string, Word>;
type Languages = { lang: string; dir: 'ltr' | 'rtl' };

const areas = {
  ...compare,
  ...hair,
  ...keeping,
  ...log,
  ...page,
  ...panel,
  ...plan,
  ...products,
  ...routine,
  ...rules,
  ...settings,
  ...shelf,
  ...shell,
  ...welcome,
};

/** Every key there is a message for. */
export type Key = keyof typeof areas;

/**
 * What all messages that a key may stand for take. A key written out, or put together from parts whose words are
 * known, must be one there is; a plain string may be any.
 */
type Given<K extends string> = string extends K
  ? [values?: Values | undefined]
  : Extract<Key, K> extends never
    ? [never, 'no such message']
    : Extract<keyof Arguments, K> extends never
      ? []
      : [values: All<Arguments[Extract<keyof Arguments, K>]>];
type All<U> = (U extends unknown ? (each: U) => void : never) extends (all: infer I) => void ? I : never;

export type Translate = (<K extends string>(key: K, ...given: Given<K>) => string) & Languages;

export const english: Catalogue = areas;

/** What is wrong in the use of a message; a product in use says what it can, tests make it an error. */
export const faults: { report?: (what: string) => void } = {};

/** A translator over a catalogue; what it lacks is taken from English, and an unknown key is shown as itself. */
export function translator(lang: string, catalogue: Catalogue = english): Translate {
  const known = new Map<string, Message>();
  const messageOf = (key: string) => {
    const had = known.get(key);
    const word = catalogue[key] ?? english[key];
    if (had || word === undefined) return had;
    const made = message(word, lang);
    known.set(key, made);
    return made;
  };
  const say = (key: string, values: Values = {}): string => {
    const found = messageOf(key);
    if (!found) {
      faults.report?.(`no message ${key}`);
      return key;
    }
    const lacks = [...found.takes.keys()].filter((name) => values[name] === undefined);
    if (lacks.length > 0) faults.report?.(`${key} lacks ${lacks.join()}`);
    return found.say({ ...Object.fromEntries(lacks.map((name) => [name, ''])), ...values });
  };
  return Object.assign(say as (...given: never[]) => string, {
    lang,
    dir: /^(ar|he|fa|ur)\b/.test(lang) ? ('rtl' as const) : ('ltr' as const),
  }) as Translate;
}
