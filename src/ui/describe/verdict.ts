import type { Answer, Finding, Said } from '../../core/judge/finding.ts';
import type { Check } from '../../use/judge/judge-product.ts';
import type { Translate } from '../words/index.ts';

/** An answer in words, in the order in which they are shown. */
export type VerdictWords = {
  answer: Answer;
  /** The answer with whom it is for: "Not for Wren". */
  title: string;
  /** What decided it, first of all, and what to mind. */
  why: string[];
  /** Whatever else decided it or is not known. */
  more: string[];
};

// Where a product suits, what it does is a better reason than what it does not hold.
const tellingFirst = ['cleansing', 'protein', 'weight', 'care', 'avoid'];

const inOrder = ({ answer, deciding }: Check): Finding[] =>
  answer === 'suits'
    ? deciding.toSorted((a, b) => tellingFirst.indexOf(a.aspect) - tellingFirst.indexOf(b.aspect))
    : deciding;

/** One's own hair, where it was given no name. */
export const isUnnamed = (who: string, t: Translate): boolean => who === t('hair.my-hair');

/** Whom an answer is for: a person by name, one's own hair where it has none, a routine. */
export function titleOf(
  { about, who, answer }: Pick<Check, 'about' | 'who' | 'answer'>,
  t: Translate,
): string {
  if (about === 'routine') return t('page.verdict.routine', { answer, who });
  return isUnnamed(who, t) ? t('page.verdict.mine', { answer }) : t('page.verdict.head', { answer, who });
}

/** Said instead of an answer where a product is for another place. */
export const notForHairWords = (t: Translate): VerdictWords => ({
  answer: 'cannot-tell',
  title: t('page.verdict.not-hair'),
  why: [t('page.verdict.not-hair.why')],
  more: [],
});

/** A check in words: its answer, one reason with its condition, then the rest. Each sentence once. */
export function verdictOf(check: Check, t: Translate): VerdictWords {
  const title = titleOf(check, t);
  const say = (said: Said | undefined) => (said ? [t(said.key, said.values)] : []);
  const sentences = inOrder(check).map(({ answer, reason, condition, unknown }) =>
    answer === 'cannot-tell' && unknown
      ? [...say(unknown), ...say(reason)]
      : [...say(reason), ...say(condition), ...say(unknown)],
  );
  const [first = [t('page.verdict.nothing-new')], ...others] = sentences;
  const cut = check.answer === 'with-care' ? 2 : 1;
  const why = first.slice(0, cut);
  const more = [...first.slice(cut), ...others.flat()];
  return { answer: check.answer, title, why, more: [...new Set(more)].filter((each) => !why.includes(each)) };
}
