import { type Catalogue, english, type Translate, translator } from './index.ts';
import { pseudo } from './pseudo.ts';

/** Languages there are words for, by their own names. */
export const languages = { en: 'English' } as const;

// Stand-ins for layout tests, longer words and right-to-left: only in the build that tests drive.
const standIns = import.meta.env?.MODE === 'localhost' ? ['en-XA', 'ar-XB'] : [];

const catalogues: Partial<Record<string, () => Promise<{ catalogue: Catalogue }>>> = {};

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

/** Words of a language as `bestLanguage` names it; other languages than English are loaded when first asked for. */
export async function wordsFor(language: string): Promise<Translate> {
  if (standIns.includes(language)) return translator(language, pseudo(english));
  const load = catalogues[language];
  return translator(language, load ? (await load()).catalogue : english);
}
