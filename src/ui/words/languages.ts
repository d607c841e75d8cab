import { type Catalogue, english, type Translate, translator } from './index.ts';
import { pseudo } from './pseudo.ts';

/** Languages there are words for, by their own names. */
export const languages = {
  en: 'English',
  de: 'Deutsch',
  es: 'Español',
  fr: 'Français',
  'pt-BR': 'Português (Brasil)',
} as const;

// Stand-ins for layout tests, longer words and right-to-left: only in the build that tests drive.
const standIns = import.meta.env?.MODE === 'localhost' ? ['en-XA', 'ar-XB'] : [];

/** The first wanted language there are words for: as written, else by its first part; English otherwise. */
export function bestLanguage(wanted: readonly (string | undefined)[]): string {
  const have = [...Object.keys(languages), ...standIns];
  for (const tag of wanted) {
    if (!tag) continue;
    const found =
      have.find((each) => each.toLowerCase() === tag.toLowerCase()) ??
      have.find((each) => each.split('-')[0] === tag.toLowerCase().split('-')[0]);
    if (found) return found;
  }
  return 'en';
}

/** Reads src/assets/words/<language>.json: part of the extension, apart from its code. */
export type LoadWords = (language: string) => Promise<Catalogue>;

const known = new Map<string, Promise<Translate>>();

type BrowserWords = {
  i18n: { getUILanguage(): string };
  runtime: { getURL(path: string): string };
};

/** Words in the user's language: files of the extension itself, no network. */
export const wordsIn = ({ i18n, runtime }: BrowserWords, { language }: { language?: string }) =>
  wordsFor(bestLanguage([language, i18n.getUILanguage()]), async (of) =>
    (await fetch(runtime.getURL(`/words/${of}.json`))).json(),
  );

/**
 * Words of a language as `bestLanguage` names it. English is always there; others are loaded when first asked
 * for and kept. A file that cannot be read leaves English.
 */
export function wordsFor(language: string, load: LoadWords): Promise<Translate> {
  const words =
    known.get(language) ??
    (language === 'en'
      ? Promise.resolve(translator('en', english))
      : standIns.includes(language)
        ? Promise.resolve(translator(language, pseudo(english)))
        : load(language).then(
            (catalogue) => translator(language, catalogue),
            () => translator('en', english),
          ));
  known.set(language, words);
  return words;
}
