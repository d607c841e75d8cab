import type { Head } from '../../core/hair/head.ts';
import type { Translate } from '../words/index.ts';

/** People in order of their names. */
export function byName({ lang }: Pick<Translate, 'lang'>, heads: readonly Head[]): Head[] {
  const { compare } = new Intl.Collator(lang, { numeric: true });
  return heads.toSorted((a, b) => compare(a.name, b.name));
}
