import { type Finding, speaksAgainst } from '../../src/core/judge/finding.ts';

/** The words of the rows for what a rule says. */
const words: Record<string, string> = {
  'no-protein': 'no-protein-where-needed',
  'protein-every-step': 'protein-in-every-step',
  'treatment-follow-up': 'treatment-without-followup',
  'treatments-apart': 'treatments-too-close',
  'step-order': 'order-wrong',
};

/** What is said against a day. What may be avoided is said even where nobody can tell. */
export const saysOf = (findings: readonly Finding[]): string[] => [
  ...new Set(
    findings
      .filter(
        (finding) =>
          speaksAgainst(finding) || (finding.aspect === 'avoid' && finding.answer === 'cannot-tell'),
      )
      .map(({ rule }) => words[rule] ?? rule),
  ),
];
