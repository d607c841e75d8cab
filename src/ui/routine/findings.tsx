import type { Finding } from '../../core/judge/finding.ts';
import { rules } from '../../core/wash-day/rules/index.ts';
import { Note } from '../parts/note.tsx';
import type { Translate } from '../words/index.ts';

/** Rules that one step decides alone: their findings stand by the step. */
export const ofProduct: ReadonlySet<string> = new Set(
  rules.filter(({ of }) => of === 'product').map(({ id }) => id),
);

/** Findings as notes: the answer, its reason, what is not known. The same sentence is said once. */
export function Findings({
  t,
  findings,
  level,
}: {
  t: Translate;
  findings: readonly Finding[];
  level?: 'step';
}) {
  const seen = new Set<string>();
  const once = findings.filter(({ answer, reason }) => {
    const words = `${answer} ${t(reason.key, reason.values)}`;
    return !seen.has(words) && seen.add(words);
  });
  return (
    <div class={level === 'step' ? 'findings of-step' : 'findings'}>
      {once.map(({ rule, answer, reason, condition, unknown }) => (
        <Note key={rule + reason.key + answer} t={t} answer={answer}>
          <p>{t(reason.key, reason.values)}</p>
          {condition && <p>{t(condition.key, condition.values)}</p>}
          {unknown && <p class="hint">{t(unknown.key, unknown.values)}</p>}
        </Note>
      ))}
    </div>
  );
}

/** "Two products hold protein." */
export const productsWords = (t: Translate, n: number) =>
  n === 0 ? t('routine.sum.products.none') : t('routine.sum.products', { n });
