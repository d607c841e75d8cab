import type { Head } from '../../core/hair/head.ts';
import { plainName } from '../../core/product/same-product.ts';
import type { Translate } from '../words/index.ts';

/** People in order of their names. */
export function byName({ lang }: Pick<Translate, 'lang'>, heads: readonly Head[]): Head[] {
  const { compare } = new Intl.Collator(lang, { numeric: true });
  return heads.toSorted((a, b) => compare(a.name, b.name));
}

/** People in whose name a word begins as typed, accents and case aside; all where nothing is typed. */
export function called(heads: readonly Head[], typed: string): Head[] {
  const sought = plainName(typed);
  return heads.filter(({ name }) => ` ${plainName(name)}`.includes(` ${sought}`));
}
