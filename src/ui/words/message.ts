import { type Formatters, IntlMessageFormat } from 'intl-messageformat';
import { onceEach } from '../../core/names/once-each.ts';

/** A list is printed as the language joins one ("a, b and c"), a number in its way of writing. */
export type Value = string | number | readonly string[];
export type Values = Record<string, Value>;

/** A message in ICU's format, as written or taken apart. */
export type Word = string | ReturnType<IntlMessageFormat['getAst']>;

/** What a message does with an argument. */
export type Takes = 'text' | 'number' | 'date' | 'choice';

export type Message = {
  takes: ReadonlyMap<string, Takes>;
  /** The values each choice knows. */
  choices: ReadonlyMap<string, ReadonlySet<string>>;
  say(values: Values): string;
};

const formats = { date: { day: { day: 'numeric', month: 'long', timeZone: 'UTC' } } } as const;

// Values by which a choice is made may not hold a hyphen in ICU's format.
const choice = (value: string) => value.replaceAll('-', '_');

const made = onceEach<unknown>(100);
/** What writes in a language is made once for all messages: it costs more than any of them. */
const writer =
  <Wanted extends unknown[], Made>(Writer: new (...wanted: Wanted) => Made) =>
  (...wanted: Wanted) =>
    made(`${Writer.name} ${JSON.stringify(wanted)}`, () => new Writer(...wanted)) as Made;

const listWriter = writer(Intl.ListFormat);
const formatters = {
  getNumberFormat: writer(Intl.NumberFormat),
  getDateTimeFormat: writer(Intl.DateTimeFormat),
  getPluralRules: writer(Intl.PluralRules),
} as Formatters;

/** In ICU's format nothing of such a text is anything but its letters. */
const isPlain = (word: Word): word is string => typeof word === 'string' && !/[{}<>]|''/.test(word);
const nothing = new Map();

/** One message of a language; throws where it is not written as the format wants it. */
export function message(word: Word, lang: string): Message {
  if (isPlain(word)) return { takes: nothing, choices: nothing, say: () => word };
  const parsed = new IntlMessageFormat(word, lang, formats, { ignoreTag: true, formatters });
  const takes = new Map<string, Takes>();
  const choices = new Map<string, Set<string>>();
  gather(parsed.getAst(), takes, choices);
  const asWanted = (value: Value, take: Takes | undefined): string | number | Date => {
    if (typeof value === 'number') {
      if (take !== 'text') return value;
      const digits = Number.isInteger(value) ? {} : { maximumSignificantDigits: 3 };
      return formatters.getNumberFormat(lang, digits).format(value);
    }
    if (typeof value !== 'string') return listWriter(lang, { type: 'conjunction' }).format(value);
    if (take === 'date') return new Date(value);
    return take === 'choice' ? choice(value) : value;
  };
  return {
    takes,
    choices,
    say: (values) =>
      String(
        parsed.format(
          Object.fromEntries(
            Object.entries(values).map(([name, value]) => [name, asWanted(value, takes.get(name))]),
          ),
        ),
      ),
  };
}

type Elements = ReturnType<IntlMessageFormat['getAst']>;

// Kinds of elements by number, as ICU's parser hands them out.
const kinds: Partial<Record<number, Takes>> = { 1: 'text', 2: 'number', 3: 'date', 5: 'choice', 6: 'number' };

/** Which arguments a message takes, and by which values it chooses; one that is also printed counts as chosen by. */
function gather(elements: Elements, takes: Map<string, Takes>, choices: Map<string, Set<string>>): void {
  for (const element of elements) {
    const take = kinds[element.type];
    if (take && 'value' in element)
      takes.set(element.value, take === 'text' ? (takes.get(element.value) ?? take) : take);
    if (!('options' in element)) continue;
    for (const [name, { value }] of Object.entries(element.options)) {
      if (take === 'choice') choices.set(element.value, (choices.get(element.value) ?? new Set()).add(name));
      gather(value, takes, choices);
    }
  }
}

/** The same message with each of its printed pieces changed. */
export function mapText(elements: Elements, change: (text: string) => string): Elements {
  return elements.map((element) => {
    if (element.type === 0) return { ...element, value: change(element.value) };
    if (!('options' in element)) return element;
    const options = Object.entries(element.options).map(([name, option]) => [
      name,
      { ...option, value: mapText(option.value, change) },
    ]);
    return { ...element, options: Object.fromEntries(options) };
  }) as Elements;
}

export const elementsOf = (word: Word): Elements =>
  typeof word === 'string' ? new IntlMessageFormat(word, 'en', formats, { ignoreTag: true }).getAst() : word;
