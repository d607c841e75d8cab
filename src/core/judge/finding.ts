/** The three answers of every question. */
export type Answer = 'suits' | 'clashes' | 'cannot-tell';

/** Words are chosen in `ui`: core says a key of the catalogue and its values. */
export type Said = { key: string; values?: Record<string, string | number> };

/** One rule's answer, with what decided it. */
export type Finding = {
  /** File name of the rule. */
  rule: string;
  answer: Answer;
  reason: Said;
  /** What decided it: steps by id (whole-day rules) and mentions by index into that step's Reading. */
  steps: string[];
  mentions: { step?: string; index: number }[];
  /** What is not known, when that matters. */
  unknown?: Said;
};
