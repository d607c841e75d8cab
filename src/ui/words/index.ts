/**
 * All words the reader sees, through one catalogue: English in one JSON file per area (words/en/hair.json
 * holds keys `hair.…`), every other language in one file of src/assets/words. Plural forms by
 * Intl.PluralRules: a word may be a string, or an object of plural categories chosen by the value `n`.
 */
import compare from './en/compare.json' with { type: 'json' };
import hair from './en/hair.json' with { type: 'json' };
import keeping from './en/keeping.json' with { type: 'json' };
import log from './en/log.json' with { type: 'json' };
import page from './en/page.json' with { type: 'json' };
import panel from './en/panel.json' with { type: 'json' };
import products from './en/products.json' with { type: 'json' };
import routine from './en/routine.json' with { type: 'json' };
import rules from './en/rules.json' with { type: 'json' };
import settings from './en/settings.json' with { type: 'json' };
import shell from './en/shell.json' with { type: 'json' };
import welcome from './en/welcome.json' with { type: 'json' };

export type Values = Record<string, string | number>;
export type Word = string | Partial<Record<Intl.LDMLPluralRule, string>>;
export type Catalogue = Record<string, Word>;
export type Translate = ((key: string, values?: Values) => string) & { lang: string; dir: 'ltr' | 'rtl' };

export const english: Catalogue = {
  ...compare,
  ...hair,
  ...keeping,
  ...log,
  ...page,
  ...panel,
  ...products,
  ...routine,
  ...rules,
  ...settings,
  ...shell,
  ...welcome,
};

/**
 * A translator over a catalogue; what it lacks is taken from English, and an unknown key is shown as itself.
 * A value `@some.key` stands for that word, an ISO date for the day it names.
 */
export function translator(lang: string, catalogue: Catalogue = english): Translate {
  const plural = new Intl.PluralRules(lang);
  const whole = new Intl.NumberFormat(lang);
  const rounded = new Intl.NumberFormat(lang, { maximumSignificantDigits: 3 });
  const date = new Intl.DateTimeFormat(lang, { day: 'numeric', month: 'long', timeZone: 'UTC' });
  const say = (key: string, values: Values = {}): string => {
    const word = catalogue[key] ?? english[key] ?? key;
    const form =
      typeof word === 'string' ? word : (word[plural.select(Number(values.n))] ?? word.other ?? key);
    return form.replace(/\{(\w+)\}/g, (all, name: string) => {
      const value = values[name];
      if (value === undefined) return all;
      if (typeof value === 'number') return (Number.isInteger(value) ? whole : rounded).format(value);
      if (value.startsWith('@') && Object.hasOwn(english, value.slice(1))) return say(value.slice(1), values);
      return /^\d{4}-\d\d-\d\d$/.test(value) ? date.format(new Date(value)) : value;
    });
  };
  return Object.assign(say, {
    lang,
    dir: /^(ar|he|fa|ur)\b/.test(lang) ? ('rtl' as const) : ('ltr' as const),
  });
}
