import { avoidList } from './avoid-list.ts';
import type { Rule } from './day.ts';
import { filmFormers } from './film-formers.ts';
import { largeProteins } from './large-proteins.ts';
import { leaveOnProteins } from './leave-on-proteins.ts';
import { leaveOnWeight } from './leave-on-weight.ts';
import { noMoisture } from './no-moisture.ts';
import { noProtein } from './no-protein.ts';
import { proteinDose } from './protein-dose.ts';
import { proteinEveryStep } from './protein-every-step.ts';
import { proteinProducts } from './protein-products.ts';
import { tooLittleRead } from './too-little-read.ts';
import { treatmentFollowUp } from './treatment-follow-up.ts';
import { treatmentShampooedOut } from './treatment-shampooed-out.ts';
import { treatmentsApart } from './treatments-apart.ts';

/** Every rule, in the order in which findings are told: what can hurt first, then what decides the plan. */
export const rules: readonly Rule[] = [
  avoidList,
  tooLittleRead,
  largeProteins,
  proteinDose,
  leaveOnProteins,
  proteinProducts,
  proteinEveryStep,
  noProtein,
  treatmentsApart,
  treatmentFollowUp,
  treatmentShampooedOut,
  noMoisture,
  filmFormers,
  leaveOnWeight,
];
