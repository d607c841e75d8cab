import { avoidList } from '../../judge/rules/avoid-list.ts';
import { tooLittleRead } from '../../judge/rules/too-little-read.ts';
import { buildUp } from './build-up.ts';
import type { Rule } from './day.ts';
import { eachProduct } from './each-product.ts';
import { hardWater } from './hard-water.ts';
import { harshCleansing } from './harsh-cleansing.ts';
import { largeProteinsStay } from './large-proteins-stay.ts';
import { missingStep } from './missing-step.ts';
import { noProtein } from './no-protein.ts';
import { proteinEveryStep } from './protein-every-step.ts';
import { stepOrder } from './step-order.ts';
import { tooHeavy } from './too-heavy.ts';
import { tooLittleMoisture } from './too-little-moisture.ts';
import { tooMuchProtein } from './too-much-protein.ts';
import { treatmentFollowUp } from './treatment-follow-up.ts';
import { treatmentsApart } from './treatments-apart.ts';
import { weakCleansing } from './weak-cleansing.ts';

/** Every rule, in the order in which findings are told: what can hurt first, then what decides the plan. */
export const rules: readonly Rule[] = [
  eachProduct(avoidList),
  eachProduct(tooLittleRead),
  tooMuchProtein,
  largeProteinsStay,
  proteinEveryStep,
  treatmentsApart,
  treatmentFollowUp,
  harshCleansing,
  weakCleansing,
  buildUp,
  hardWater,
  tooHeavy,
  tooLittleMoisture,
  noProtein,
  stepOrder,
  missingStep,
];
