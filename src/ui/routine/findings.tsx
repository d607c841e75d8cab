import type { Finding } from '../../core/judge/finding.ts';
import { rules } from '../../core/wash-day/rules/index.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { glyphOfAnswer } from '../glyphs/shapes.ts';
import type { Translate } from '../words/index.ts';

/** Rules that one step decides alone: their findings stand by the step. */
export const ofProduct: ReadonlySet<string> = new Set(
  rules.filter(({ of }) => of === 'product').map(({ id }) => id),
);

/** One finding in one line: its rings, what it is about, the reason with what to mind, what is not known. */
export function FindingLine({ t, finding, about }: { t: Translate; finding: Finding; about?: string }) {
  const { answer, reason, condition, unknown } = finding;
  return (
    <li class={`finding ${answer}`}>
      <span class="finding-ring">
        <Glyph name={glyphOfAnswer(answer)} label={t(`shell.answer.${answer}`)} ground="var(--paper)" />
      </span>
      <span>
        {about && <span class="hint finding-about">{about}</span>}
        {t(reason.key, reason.values)}
        {condition && ` ${t(condition.key, condition.values)}`}
        {unknown && <span class="hint"> {t(unknown.key, unknown.values)}</span>}
      </span>
    </li>
  );
}

/** Findings, a line each. The same sentence is said once. */
export function Findings({ t, findings }: { t: Translate; findings: readonly Finding[] }) {
  const seen = new Set<string>();
  const once = findings.filter(({ answer, reason }) => {
    const words = `${answer} ${t(reason.key, reason.values)}`;
    return !seen.has(words) && seen.add(words);
  });
  return (
    <ul class="plain-list findings">
      {once.map((finding) => (
        <FindingLine key={finding.rule + finding.reason.key + finding.answer} t={t} finding={finding} />
      ))}
    </ul>
  );
}

/** "Two products hold protein." */
export const productsWords = (t: Translate, n: number) =>
  n === 0 ? t('routine.sum.products.none') : t('routine.sum.products', { n });
