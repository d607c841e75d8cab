/** The numbers of common practice, each with its source: what `allowanceOf` and the wash-day rules take. */
import type { AllowancePractice, Practice, WashDayPractice } from '../src/core/judge/practice.ts';
import allowance from './allowance.json' with { type: 'json' };
import washDay from './wash-day.json' with { type: 'json' };

export const practice: Practice = {
  allowance: allowance as AllowancePractice,
  washDay: washDay as unknown as WashDayPractice,
};
