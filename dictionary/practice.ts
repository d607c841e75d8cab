/** The numbers of common practice, each with its source: what `allowanceOf` and the wash-day rules take. */

import type { Markets } from '../src/core/amounts/market.ts';
import type { MatterPractice } from '../src/core/judge/matter.ts';
import type {
  AllowancePractice,
  JudgePractice,
  Practice,
  WashDayPractice,
} from '../src/core/judge/practice.ts';
import type { LearnPractice } from '../src/core/learn/learn-practice.ts';
import type { PlanPractice } from '../src/core/plan/build/plan-practice.ts';
import allowance from './allowance.json' with { type: 'json' };
import inHand from './amounts/in-hand.json' with { type: 'json' };
import markets from './amounts/markets.json' with { type: 'json' };
import judge from './judge.json' with { type: 'json' };
import learn from './learn.json' with { type: 'json' };
import matter from './matter.json' with { type: 'json' };
import plan from './plan.json' with { type: 'json' };
import washDay from './wash-day.json' with { type: 'json' };

export const practice: Practice = {
  allowance: allowance as AllowancePractice,
  markets: markets as Markets,
  washDay: { ...washDay, inHand } as unknown as WashDayPractice,
  matter: matter as MatterPractice,
  judge: judge as JudgePractice,
  plan: plan as PlanPractice,
  learn: learn as LearnPractice,
};
