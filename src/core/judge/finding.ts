/** The four answers of every question. */
export type Answer = 'suits' | 'with-care' | 'does-not-suit' | 'cannot-tell';

/** The worst first: what is said first. */
export const answersByWeight = ['does-not-suit', 'cannot-tell', 'with-care', 'suits'] as const;

/** What a product is asked for one head: before all, whether it holds anything to avoid and was read at all. */
export type Aspect = 'avoid' | 'label' | 'protein' | 'weight' | 'cleansing' | 'care';

/** Words are chosen in `ui`: core says a key of the catalogue and its values. */
export type Said = { key: string; values?: Record<string, string | number> };

/** One rule's answer, with what decided it. */
export type Finding = {
  /** File name of the rule. */
  rule: string;
  aspect: Aspect;
  answer: Answer;
  reason: Said;
  /** What decided it: steps by id (whole-day rules) and mentions by index into that step's Reading. */
  steps: string[];
  mentions: { step?: string; index: number }[];
  /** How much of it: compared where the same rule speaks before and after a change. */
  extent?: number;
  /** Of an answer with care: how often, how little, on which lengths, balanced by what. */
  condition?: Said;
  /** What is not known, when that matters. */
  unknown?: Said;
};

/** The whole is the worst of them. */
export const worstOf = (findings: readonly Pick<Finding, 'answer'>[]): Answer =>
  answersByWeight.find((answer) => findings.some((finding) => finding.answer === answer)) ?? 'suits';

export const worseOf = (a: Answer, b: Answer): Answer =>
  answersByWeight.indexOf(a) < answersByWeight.indexOf(b) ? a : b;

/** Whether a finding asks for a change: what cannot be told asks for an answer instead. */
export const speaksAgainst = ({ answer }: Pick<Finding, 'answer'>): boolean =>
  answer === 'does-not-suit' || answer === 'with-care';
