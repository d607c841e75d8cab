import { avoidList } from '../../judge/rules/avoid-list.ts';
import { tooLittleRead } from '../../judge/rules/too-little-read.ts';
import { buildUp } from './build-up.ts';
import type { Rule } from './day.ts';
import { eachProduct } from './each-product.ts';
import { hardWater } from './hard-water.ts';
import { harshCleansing } from './harsh-cleansing.ts';
import { missingStep } from './missing-step.ts';
import { largeProteinsStay } from './protein/large-proteins-stay.ts';
import { noProtein } from './protein/no-protein.ts';
import { proteinEveryStep } from './protein/protein-every-step.ts';
import { tooMuchProtein } from './protein/too-much-protein.ts';
import { treatmentFollowUp } from './protein/treatment-follow-up.ts';
import { treatmentsApart } from './protein/treatments-apart.ts';
import { stepOrder } from './step-order.ts';
import { tooHeavy } from './too-heavy.ts';
import { tooLittleMoisture } from './too-little-moisture.ts';
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
