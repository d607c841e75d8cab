import { type Catalogue, english, type Translate, translator } from './index.ts';

/** Languages there are words for, by their own names. */
export const languages = { en: 'English' } as const;
export type Language = keyof typeof languages;

const catalogues: Partial<Record<Language, () => Promise<{ catalogue: Catalogue }>>> = {};

/** The first wanted language there are words for: as written, else by its first part; English otherwise. */
export function bestLanguage(wanted: readonly (string | undefined)[]): Language {
  const have = Object.keys(languages) as Language[];
  for (const tag of wanted) {
    if (!tag) continue;
    const exact = have.find((each) => each.toLowerCase() === tag.toLowerCase());
    const near = have.find((each) => each.split('-')[0] === tag.toLowerCase().split('-')[0]);
    if (exact ?? near) return (exact ?? near) as Language;
  }
  return 'en';
}

/** Words of a language; other languages than English are loaded when first asked for. */
export async function wordsFor(language: Language): Promise<Translate> {
  const load = catalogues[language];
  return translator(language, load ? (await load()).catalogue : english);
}
